package org.barreltally.cost;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.pricing.Money;

/**
 * What the maker's stock is worth at cost at the end of a day, as the book knew it in the year of
 * that day.
 *
 * @param totals by where it stands
 */
public record StockValue(
    LocalDate on, CostMethod method, Money total, List<Total> totals, List<Row> rows, String note) {

  /**
   * @param where {@code barrels, own-shelves, shows, consigned, elsewhere}
   */
  public record Total(String where, Money cost) {}

  /** What stands at a place. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Row(
      String where, String place, String lot, String container, String grade, Amount stands) {}
}
