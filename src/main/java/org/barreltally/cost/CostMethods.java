package org.barreltally.cost;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.NavigableMap;
import org.barreltally.cost.internal.CostRows;
import org.barreltally.refusal.InvalidField;

/** By which method each year is valued. */
@ApplicationScoped
public class CostMethods {

  /** A method chosen, and when. */
  public record Chosen(int year, CostMethod method, Instant at) {}

  private static final int FIRST = 1900;
  private static final int LAST = 2999;

  private final CostRows rows;

  CostMethods(CostRows rows) {
    this.rows = rows;
  }

  /**
   * Chooses the method of a year, and of those after it that have none of their own.
   *
   * @throws InvalidField if year or method is missing
   * @throws MethodKept if the year is closed
   */
  @Transactional
  public Chosen choose(Integer year, CostMethod method) {
    if (year == null || year < FIRST || year > LAST) {
      throw new InvalidField("year", "Give the year, for example 2026.");
    }
    if (method == null) {
      throw new InvalidField(
          "method", "Give one of specific-lot, moving-average, first-in-first-out.");
    }
    rows.waitForClosing();
    rows.lastClosed()
        .filter(closed -> year <= closed)
        .ifPresent(
            closed -> {
              throw new MethodKept(year, closed);
            });
    return rows.choose(year, method);
  }

  /** The newest choice of each year, the earliest year first. */
  @Transactional
  public List<Chosen> list() {
    return rows.methods();
  }

  /** The method of a year: its own, else that of the nearest year before, else by specific lot. */
  static CostMethod of(int year, NavigableMap<Integer, CostMethod> chosen) {
    var nearest = chosen.floorEntry(year);
    return nearest == null ? CostMethod.SPECIFIC_LOT : nearest.getValue();
  }
}
