package org.barreltally.ledger;

import java.util.Collection;
import java.util.function.Function;

/**
 * One column of several rows, bound as an array for {@code unnest}.
 *
 * @param type PostgreSQL's name of the element's type, for example {@code bigint}
 * @param values one for each row; a null is SQL's null
 */
public record Column(String type, Object[] values) {

  /** The column that {@code value} makes of some rows. */
  public static <T> Column of(String type, Collection<T> rows, Function<? super T, ?> value) {
    return new Column(type, rows.stream().map(value).toArray());
  }

  /** The values themselves as a column. */
  public static Column of(String type, Collection<?> values) {
    return new Column(type, values.toArray());
  }
}
