package org.barreltally.shares;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;

/** Jars that were handed to a landowner. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record HandedOver(
    UUID id, UUID lease, LocalDate on, UUID movement, List<Line> lines, String note) {

  public HandedOver {
    lines = List.copyOf(lines);
  }

  /**
   * Jars of one lot and size.
   *
   * @param mLEach nominal contents of one in millilitres at 20 °C
   * @param listPrice of one on the day, by the lease's list or the retail list; null where none
   *     names it
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Line(
      String container, String grade, String lot, long count, BigDecimal mLEach, Money listPrice) {

    BigDecimal mL() {
      return mLEach.multiply(BigDecimal.valueOf(count));
    }
  }
}
