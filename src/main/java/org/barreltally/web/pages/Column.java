package org.barreltally.web.pages;

import java.util.Comparator;
import java.util.function.Function;

/**
 * A column that a list can be sorted by.
 *
 * @param key its name in the address
 */
public record Column<T>(String key, Comparator<T> order) {

  /** A column sorted by a value; rows without one come last. */
  public static <T, C extends Comparable<? super C>> Column<T> by(
      String key, Function<T, C> value) {
    return new Column<>(
        key, Comparator.comparing(value, Comparator.nullsLast(Comparator.naturalOrder())));
  }
}
