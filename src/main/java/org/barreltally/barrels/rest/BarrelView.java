package org.barreltally.barrels.rest;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.Material;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Unit;
import org.barreltally.settings.FarmSettings;

/**
 * A barrel as the interface shows it.
 *
 * @param brix true, at 20 °C
 * @param mass in kg, with its standard uncertainty in {@code massUncertainty}
 * @param netWeight in lb, as a scale reads in air
 * @param volumeAt68F in gal
 * @param nearGradeLine whether the reading is so near a grade's limit that the meter cannot tell
 * @param dipstickGap null unless it was both weighed and dipped
 */
public record BarrelView(
    String tag,
    String lot,
    int season,
    List<Integer> seasons,
    BarrelState state,
    boolean held,
    ColorClass grade,
    BigDecimal brix,
    Quantity mass,
    Quantity massUncertainty,
    Quantity netWeight,
    Quantity volumeAt68F,
    Double transmittance,
    Taste taste,
    Material material,
    LocalDate filledOn,
    String place,
    boolean withinDensityLimits,
    Boolean nearGradeLine,
    Gap dipstickGap,
    List<String> cautions) {

  private static final double G_PER_KG = 1000;

  /** Dipstick minus weight, at 68 °F. */
  public record Gap(Quantity volume, boolean beyondUncertainty) {}

  static BarrelView of(Barrel barrel, FarmSettings settings) {
    double grams = barrel.grams().value();
    Double transmittance = barrel.lot().transmittance();
    return new BarrelView(
        barrel.tag(),
        barrel.lot().code(),
        barrel.season(),
        barrel.seasons(),
        barrel.state(),
        barrel.lot().held(),
        barrel.lot().grade(),
        BigDecimal.valueOf(barrel.lot().brix().value()).setScale(3, RoundingMode.HALF_UP),
        Quantity.rounded(grams / G_PER_KG, Unit.KG, 3),
        Quantity.rounded(barrel.grams().u() / G_PER_KG, Unit.KG, 3),
        pounds(barrel, grams),
        gallons(barrel.syrup().mLAt20(grams)),
        transmittance,
        barrel.lot().taste(),
        barrel.material(),
        barrel.filledOn(),
        barrel.place(),
        settings.jurisdiction().densityWithin(barrel.lot().brix().value()),
        transmittance == null
            ? null
            : settings
                .jurisdiction()
                .nearALine(
                    transmittance, settings.instruments().halfWidth(InstrumentKind.COLOR_METER)),
        barrel.gapML() == null ? null : new Gap(gallons(barrel.gapML()), barrel.gapBeyond()),
        cautions(barrel));
  }

  static Quantity pounds(Barrel barrel, double grams) {
    return Quantity.rounded(barrel.syrup().weightInAir(grams), Unit.G, 3).to(Unit.LB, 2);
  }

  private static Quantity gallons(double milliliters) {
    return Quantity.rounded(milliliters, Unit.ML, 3).to(Unit.GAL, 3);
  }

  private static List<String> cautions(Barrel barrel) {
    List<String> cautions = new ArrayList<>();
    barrel.material().caution().ifPresent(cautions::add);
    if (barrel.isPartFilled()) {
      cautions.add(
          "Part filled: warm, damp air over syrup lets mould start. Keep it cold, use it soon, and heat"
              + " all of it again before topping up.");
    }
    if (Boolean.TRUE.equals(barrel.gapBeyond())) {
      cautions.add(
          "Scale and dipstick differ by more than both may be off: the syrup was probably dipped hot, or the tare"
              + " changed. The weight counts.");
    }
    return cautions;
  }
}
