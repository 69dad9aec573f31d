package org.barreltally.sugarbush.boiling;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.Quantity;

/**
 * A boil of a day.
 *
 * @param season null for the year of the day
 * @param endedAt null while it is going on; a note says it later
 * @param pressure of the air at the sugarhouse; may be null
 * @param waterBoils at what temperature water boiled there that day; may be null
 * @param targetBrix null for the least of the jurisdiction
 * @param fuel in the maker's own measure, as "2 cords of slabs"; may be null
 */
public record StartBoil(
    LocalDate on,
    Integer season,
    Instant startedAt,
    Instant endedAt,
    Pressure pressure,
    Quantity waterBoils,
    BigDecimal targetBrix,
    String fuel,
    String note,
    List<Feed> feeds) {

  public StartBoil {
    // one that was sent as null is refused by name later
    feeds = feeds == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(feeds));
  }

  /** As it is kept: the target that held, and the feeds in rows of their own. */
  StartBoil kept(double target) {
    return new StartBoil(
        on,
        season,
        startedAt,
        endedAt,
        pressure,
        waterBoils,
        BigDecimal.valueOf(target),
        fuel,
        note,
        null);
  }
}
