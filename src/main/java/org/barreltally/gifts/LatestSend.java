package org.barreltally.gifts;

import java.time.LocalDate;

/**
 * The latest day to hand a parcel over, worked back from the day it is wanted.
 *
 * @param zone of the carrier's table that described the address most closely
 * @param days carrying days on the way
 */
public record LatestSend(
    String carrier, String zone, int days, LocalDate wantedBy, LocalDate latestSend) {}
