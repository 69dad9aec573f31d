package org.barreltally.keeping.internal;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as the catalog describes it.
 *
 * @param columns by position, without computed ones
 * @param key by what its rows are told apart: SQL terms to sort by, the same on every server
 * @param needs tables whose rows must be there before, by constraints that cannot wait
 */
record BookTable(
    String schema, String name, List<String> columns, List<String> key, List<String> needs) {

  /** Its name in SQL. */
  String sql() {
    return quoted(schema) + "." + quoted(name);
  }

  /** All rows as CSV with a line of column names, in the order of its key. */
  String copyOut() {
    return "COPY (SELECT %s FROM %s ORDER BY %s) TO STDOUT WITH (FORMAT csv, HEADER true)"
        .formatted(columnList(), sql(), String.join(", ", key));
  }

  /** Takes such a CSV; the line of column names must be this table's. */
  String copyIn(List<String> inOrder) {
    return "COPY %s (%s) FROM STDIN WITH (FORMAT csv, HEADER match)"
        .formatted(sql(), list(inOrder));
  }

  private String columnList() {
    return list(columns);
  }

  private static String list(List<String> names) {
    return names.stream().map(BookTable::quoted).collect(Collectors.joining(", "));
  }

  /** A name as SQL takes it, whatever it holds. */
  static String quoted(String name) {
    return '"' + name.replace("\"", "\"\"") + '"';
  }
}
