package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.math.BigDecimal;
import java.util.List;
import org.barreltally.pricing.Money;

/**
 * The place one gets at a show and what it costs.
 *
 * @param fee flat; null if there is none
 * @param percentOfSales of the takings, 0 to 100; null if there is none
 * @param deposit asked for beforehand; null if there is none
 * @param tables to set jars on
 */
public record Booth(
    Money fee,
    BigDecimal percentOfSales,
    Money deposit,
    @JsonSetter(contentNulls = Nulls.FAIL) List<Table> tables) {

  /**
   * A table to set jars on.
   *
   * @param lengthInches along the aisle
   * @param depthInches front to back
   * @param tiers levels one above the other, 1 where jars stand on the table only
   */
  public record Table(BigDecimal lengthInches, BigDecimal depthInches, Integer tiers) {}

  public Booth {
    tables = tables == null ? List.of() : List.copyOf(tables);
  }
}
