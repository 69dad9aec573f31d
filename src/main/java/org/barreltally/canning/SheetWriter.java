package org.barreltally.canning;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;

/** Writes a reckoning out as a pack sheet, rounded for people. */
final class SheetWriter {

  private static final double G_PER_KG = 1000;

  private final CanningOrder order;
  private final Reckoning reckoning;
  private final Syrup syrup;

  SheetWriter(CanningOrder order, Reckoning reckoning) {
    this.order = order;
    this.reckoning = reckoning;
    this.syrup = reckoning.batch().syrup();
  }

  /**
   * @param lot null in a what-if
   * @param grade null when not measured
   */
  PackSheet write(String lot, ColorClass grade, Jurisdiction jurisdiction, List<String> cautions) {
    return new PackSheet(
        lot,
        order.on(),
        grade,
        decimal(reckoning.batch().brix().value(), 2),
        order.transmittance() == null ? null : decimal(order.transmittance(), 2),
        reckoning.batch().seasons(),
        blend(),
        reckoning.fills().stream().map(this::filled).toList(),
        heel(),
        shrink(),
        jurisdiction.densityWithin(reckoning.batch().brix().value()),
        order.releaseReason(),
        List.copyOf(cautions));
  }

  private PackSheet.Blended blend() {
    Batch batch = reckoning.batch();
    double grams = batch.grams().value();
    double cold = syrup.mLAt20(grams);
    double hot = syrup.mLAt(grams, celsius());
    return new PackSheet.Blended(
        pounds(grams),
        Quantity.rounded(grams / G_PER_KG, Unit.KG, 3),
        decimal(batch.brix().value(), 2),
        gallons(grams),
        Quantity.rounded(hot, Unit.ML, 3).to(Unit.GAL, 3),
        decimal(100 * (1 - cold / hot), 2),
        pounds(batch.waterGrams()),
        batch.transmittance().isPresent() ? decimal(batch.transmittance().getAsDouble(), 1) : null,
        Quantity.rounded(batch.grams().u() / G_PER_KG, Unit.KG, 3));
  }

  private PackSheet.Filled filled(Fill fill) {
    return new PackSheet.Filled(
        fill.container().code(),
        fill.container().netContents(),
        Quantity.rounded(syrup.weightInAir(fill.gramsEach()), Unit.G, 1),
        Quantity.rounded(syrup.mLAt(fill.gramsEach(), celsius()), Unit.ML, 1),
        fill.count(),
        fill.broken(),
        fill.possible());
  }

  private PackSheet.KeptHeel heel() {
    return order.heel() == null
        ? null
        : new PackSheet.KeptHeel(
            pounds(reckoning.heel()), gallons(reckoning.heel()), order.heel().keptIn());
  }

  private PackSheet.Shrink shrink() {
    double in = reckoning.batch().grams().value();
    double lost = reckoning.shrink();
    double withoutBroken = lost - reckoning.broken();
    return new PackSheet.Shrink(
        gallons(lost),
        decimal(100 * lost / in, 2),
        new PackSheet.Causes(
            gallons(reckoning.filter()),
            gallons(reckoning.overfill()),
            gallons(reckoning.broken()),
            gallons(reckoning.unexplained().value())),
        reckoning.unexplained().differsFrom(Uncertain.exact(0)),
        gallons(reckoning.unexplained().u()),
        new PackSheet.WithoutBroken(gallons(withoutBroken), decimal(100 * withoutBroken / in, 2)));
  }

  private double celsius() {
    return reckoning.fillTemperature().doubleIn(Unit.DEGC);
  }

  private Quantity pounds(double grams) {
    return Quantity.rounded(syrup.weightInAir(grams), Unit.G, 3).to(Unit.LB, 2);
  }

  private Quantity gallons(double grams) {
    return Quantity.rounded(syrup.mLAt20(grams), Unit.ML, 3).to(Unit.GAL, 3);
  }

  private static BigDecimal decimal(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }
}
