package org.barreltally.watch;

import java.time.LocalDate;
import org.barreltally.measure.ColorClass;

/**
 * A lot of which something stands at own places: its jars, or its syrup in one vessel.
 *
 * @param tag of the vessel; null for jars
 * @param pieces jars; 0 for a vessel
 * @param plasticSizes codes of the plastic sizes its jars are in; null without any
 * @param plasticVessel whether the vessel is of plastic
 * @param madeOn the day it was packed, filled or blended
 * @param lastRead the day of the newest colour reading; null if it was never read
 * @param transmittance %Tc at that reading; null if it was never read
 * @param heldSince the day on which the hold that stands began; null if it is not held
 */
public record StandingLot(
    String lot,
    String tag,
    long pieces,
    String plasticSizes,
    boolean plasticVessel,
    LocalDate madeOn,
    LocalDate lastRead,
    ColorClass grade,
    Double transmittance,
    LocalDate heldSince) {

  /** The vessel's tag, or the lot whose jars they are. */
  String name() {
    return tag != null ? tag : lot;
  }

  /** From when on its colour is not known any more: made, or read since. */
  LocalDate colourKnown() {
    return lastRead != null && lastRead.isAfter(madeOn) ? lastRead : madeOn;
  }

  String words() {
    return tag != null
        ? "Lot %s in %s".formatted(lot, tag)
        : "Lot %s (%d jars)".formatted(lot, pieces);
  }
}
