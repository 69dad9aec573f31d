package org.barreltally.reconciliation.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.reconciliation.Amount;
import org.barreltally.reconciliation.Balance;
import org.barreltally.reconciliation.Line;

/**
 * A balance as it is answered: opening + made + water + bought + returned = all of out + converted
 * + unexplained + closing.
 *
 * @param converted between lots: into and out of jars and blends; near zero for all lots together
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ReconciliationView(
    int season,
    String lot,
    Said opening,
    Said made,
    Said water,
    Said bought,
    Said returned,
    Out out,
    Said converted,
    Closing closing,
    Unexplained unexplained) {

  private static final double G_PER_KG = 1000;
  private static final int KG_DECIMALS = 3;
  private static final int GAL_DECIMALS = 3;

  /** Mass, the volume it has at 68 °F, and the jars in it. */
  public record Said(Quantity mass, Quantity volumeAt68F, long pieces) {

    static Said of(Amount amount) {
      return new Said(kg(amount.grams()), gallons(amount.mL()), amount.pieces());
    }
  }

  /** Where it went. */
  public record Out(
      Said sold,
      Said gifts,
      Said shares,
      Said bulk,
      Said consignedSold,
      Said samples,
      Said broken,
      Said discarded,
      Said shrink) {}

  /** What stands at the end: in barrels and heels, in jars, in jars at shops. */
  public record Closing(Said barrels, Said containers, Said consigned) {}

  /**
   * @param percent of all that came in
   * @param significant whether it is more than twice its standard uncertainty
   */
  public record Unexplained(
      Quantity mass,
      Quantity volumeAt68F,
      long pieces,
      BigDecimal percent,
      Quantity standardUncertainty,
      boolean significant) {}

  /** As the interface tells a balance. */
  public static ReconciliationView of(Balance balance) {
    Amount unexplained = balance.line(Line.UNEXPLAINED);
    return new ReconciliationView(
        balance.season(),
        balance.lot(),
        said(balance, Line.OPENING),
        said(balance, Line.MADE),
        said(balance, Line.WATER),
        said(balance, Line.BOUGHT),
        said(balance, Line.RETURNED),
        new Out(
            said(balance, Line.SOLD),
            said(balance, Line.GIFTS),
            said(balance, Line.SHARES),
            said(balance, Line.BULK),
            said(balance, Line.CONSIGNED_SOLD),
            said(balance, Line.SAMPLES),
            said(balance, Line.BROKEN),
            said(balance, Line.DISCARDED),
            said(balance, Line.SHRINK)),
        said(balance, Line.CONVERTED),
        new Closing(
            said(balance, Line.BARRELS),
            said(balance, Line.CONTAINERS),
            said(balance, Line.CONSIGNED)),
        new Unexplained(
            kg(unexplained.grams()),
            gallons(unexplained.mL()),
            unexplained.pieces(),
            BigDecimal.valueOf(balance.unexplainedPercent()).setScale(2, RoundingMode.HALF_UP),
            kg(balance.unexplainedU()),
            balance.unexplainedSignificant()));
  }

  private static Said said(Balance balance, Line line) {
    return Said.of(balance.line(line));
  }

  private static Quantity kg(double grams) {
    return Quantity.rounded(grams / G_PER_KG, Unit.KG, KG_DECIMALS);
  }

  private static Quantity gallons(double mL) {
    return Quantity.rounded(mL, Unit.ML, 3).to(Unit.GAL, GAL_DECIMALS);
  }
}
