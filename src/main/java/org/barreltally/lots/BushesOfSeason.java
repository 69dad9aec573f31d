package org.barreltally.lots;

import java.time.LocalDate;
import java.util.List;

/** Where the sap of a season came from; implemented where the sugarhouse's log is known. */
public interface BushesOfSeason {

  /**
   * The names of the bushes whose sap the log has of a season, gathered by a day, in their order.
   */
  List<String> gathered(int season, LocalDate until);
}
