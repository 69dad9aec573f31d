package org.barreltally.barrels;

import java.time.LocalDate;
import org.barreltally.refusal.InvalidField;

/** The crop year of syrup. */
final class Season {

  private static final int EARLIEST = 1900;

  private Season() {}

  /**
   * @throws InvalidField if it is missing, or later than the day on which the syrup was there
   */
  static int checked(Integer season, LocalDate on) {
    if (season == null) {
      throw new InvalidField("season", "Give the crop year, for example " + on.getYear() + ".");
    }
    if (season < EARLIEST || season > on.getYear()) {
      throw new InvalidField(
          "season",
          "Syrup of %d is of the crop of %d or earlier, not %d."
              .formatted(on.getYear(), on.getYear(), season));
    }
    return season;
  }
}
