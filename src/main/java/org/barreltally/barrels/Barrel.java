package org.barreltally.barrels;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.lots.Lot;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;

/**
 * A vessel's newest filling as it stands.
 *
 * @param filling the record's id
 * @param heel whether it is a vessel that keeps heels and not a barrel
 * @param capacityML what it takes to the brim, millilitres; null where nobody said
 * @param item the syrup in the ledger
 * @param grams of syrup in it, by the book, with the standard uncertainty
 * @param tareGrams of the empty vessel as a scale reads in air; null when it was only dipped
 * @param gapML dipstick minus weight at 68 °F when both were read, else null
 * @param gapBeyond whether that gap is beyond its uncertainty; null without a gap
 * @param version never the same again once anything happened to the filling: its lot and how many
 *     movements, gradings, holds and readings it has
 */
public record Barrel(
    UUID filling,
    String tag,
    boolean heel,
    Material material,
    BigDecimal capacityML,
    String place,
    LocalDate filledOn,
    int season,
    BarrelState state,
    Lot lot,
    UUID item,
    Uncertain grams,
    Long tareGrams,
    Double gapML,
    Boolean gapBeyond,
    String version) {

  /** Hot syrup shrinks by some 3 percent as it cools; under nine tenths it was not filled up. */
  private static final double FILLED_UP = 0.9;

  public Syrup syrup() {
    return new Syrup(lot.brix().value());
  }

  /** Whether there is head space over the syrup: some was drawn, or it was never filled up. */
  public boolean isPartFilled() {
    boolean low =
        capacityML != null && syrup().mLAt20(grams.value()) < FILLED_UP * capacityML.doubleValue();
    return state == BarrelState.OPENED || state == BarrelState.FULL && low;
  }

  public List<Integer> seasons() {
    return lot.seasons();
  }
}
