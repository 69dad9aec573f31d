package org.barreltally.cost;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * What was spent and what it belongs to; one of season, lot, run, container, supply, show.
 *
 * @param per of a container or supply: the amount is for so many of it
 * @param late it is of a year that was closed when it was entered, and is booked in an open one
 * @param reversed null while it stands
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Cost(
    UUID id,
    LocalDate on,
    CostKind kind,
    Integer season,
    String lot,
    String run,
    String container,
    String supply,
    UUID show,
    Money amount,
    BigDecimal hours,
    Money rate,
    Integer per,
    String note,
    int bookYear,
    boolean late,
    Reversed reversed) {

  /** That it was taken back. */
  public record Reversed(String reason, Instant at, int bookYear, boolean late) {}
}
