package org.barreltally.supplies.internal;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.supplies.Supply;
import org.barreltally.supplies.internal.SupplyBook.Balance;

/**
 * What must be known of supplies to store a run or to think of one, asked for in one bundle. The
 * last question comes after the locks, so that it sees what was counted while we waited for them.
 */
public final class RunQuestions {

  private static final String USED =
      """
      (s.per_jar IS NOT NULL OR s.jars_each IS NOT NULL)
        AND (s.container IS NULL OR s.container = ANY (?::text[]))
      """;

  private static final String SUPPLIES =
      "SELECT s.code, s.name, s.kind, s.container, s.per_jar, s.jars_each, s.low_line"
          + " FROM supplies s WHERE "
          + USED
          + " ORDER BY s.code";

  /** By code, so that two runs never wait for each other in a ring. */
  private static final String BALANCES =
      "SELECT b.supply, b.on_hand, b.seq FROM supply_balances b"
          + " WHERE b.supply IN (SELECT s.code FROM supplies s WHERE "
          + USED
          + ") ORDER BY b.supply";

  private static final String COUNTED =
      "SELECT DISTINCT m.supply FROM supply_movements m"
          + " WHERE m.kind = 'count' AND m.happened_on > ?"
          + " AND m.supply IN (SELECT s.code FROM supplies s WHERE "
          + USED
          + ")";

  private final Map<String, Supply> supplies = new LinkedHashMap<>();
  private final Map<String, Balance> balances = new HashMap<>();
  private final Set<String> counted = new HashSet<>();

  /**
   * @param sizes of jars that are filled
   * @param lock whether balances are kept from others until the transaction ends
   */
  public RunQuestions(LocalDate on, Collection<String> sizes, boolean lock, Bundle ask) {
    Column codes = Column.of("text", sizes);
    ask.ask(
        SUPPLIES,
        row -> {
          Supply supply = SupplyRows.supply(row::getObject);
          supplies.put(supply.code(), supply);
        },
        codes);
    ask.ask(
        lock ? BALANCES + " FOR UPDATE OF b" : BALANCES,
        row -> balances.put(row.getString(1), new Balance(row.getLong(2), row.getLong(3))),
        codes);
    ask.ask(COUNTED, row -> counted.add(row.getString(1)), on, codes);
  }

  /** What jars of the sizes use up, by code. */
  public Collection<Supply> supplies() {
    return supplies.values();
  }

  /** What is on hand; null where it is not counted yet. */
  public Balance balance(Supply supply) {
    return balances.get(supply.code());
  }

  /** Whether it was counted on a later day: that count had in it whatever happened on this one. */
  public boolean countedAfter(Supply supply) {
    return counted.contains(supply.code());
  }
}
