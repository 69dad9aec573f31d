package org.barreltally.keeping.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barreltally.keeping.Manifest;

/** What PostgreSQL's catalog knows of one schema. */
final class Catalog {

  /**
   * Text sorts by code point everywhere, whatever the server's language. UNLOGGED tables are no
   * part of the book.
   */
  private static final String TABLES =
      """
      SELECT c.relname,
        ARRAY(SELECT a.attname::text FROM pg_attribute a
              WHERE a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
                AND a.attgenerated = '' ORDER BY a.attnum) AS columns,
        ARRAY(SELECT quote_ident(a.attname) || CASE WHEN a.attcollation <> 0 THEN ' COLLATE "C"' ELSE '' END
              FROM pg_index i, unnest(i.indkey) WITH ORDINALITY AS k(attnum, nth), pg_attribute a
              WHERE i.indrelid = c.oid AND i.indisprimary AND a.attrelid = c.oid
                AND a.attnum = k.attnum ORDER BY k.nth) AS key,
        ARRAY(SELECT DISTINCT r.relname::text FROM pg_constraint f JOIN pg_class r ON r.oid = f.confrelid
              WHERE f.conrelid = c.oid AND f.contype = 'f' AND NOT f.condeferrable
                AND r.oid <> c.oid ORDER BY 1) AS needs
      FROM pg_class c
      WHERE c.relnamespace = (SELECT oid FROM pg_namespace WHERE nspname = ?)
        AND c.relkind IN ('r', 'p') AND c.relpersistence = 'p' AND NOT c.relispartition
        AND NOT EXISTS (SELECT 1 FROM pg_depend d WHERE d.classid = 'pg_class'::regclass
                        AND d.objid = c.oid AND d.deptype = 'e')
      ORDER BY c.relname COLLATE "C"
      """;

  private static final String SEQUENCES =
      "SELECT sequencename, last_value FROM pg_sequences WHERE schemaname = ?"
          + " ORDER BY sequencename COLLATE \"C\"";

  private Catalog() {}

  /** The tables of a schema by name. */
  static Map<String, BookTable> tables(Connection connection, String schema) throws SQLException {
    Map<String, BookTable> tables = new LinkedHashMap<>();
    try (PreparedStatement query = connection.prepareStatement(TABLES)) {
      query.setString(1, schema);
      ResultSet rows = query.executeQuery();
      while (rows.next()) {
        String name = rows.getString("relname");
        List<String> key = texts(rows, "key");
        tables.put(
            name,
            new BookTable(
                schema,
                name,
                texts(rows, "columns"),
                key.isEmpty() ? List.of(BookTable.quoted(name) + "::text COLLATE \"C\"") : key,
                texts(rows, "needs")));
      }
    }
    return tables;
  }

  private static List<String> texts(ResultSet rows, String column) throws SQLException {
    return Arrays.stream((Object[]) rows.getArray(column).getArray())
        .map(String.class::cast)
        .toList();
  }

  /** The counters of a schema by name. */
  static List<Manifest.Sequence> sequences(Connection connection, String schema)
      throws SQLException {
    List<Manifest.Sequence> found = new ArrayList<>();
    try (PreparedStatement query = connection.prepareStatement(SEQUENCES)) {
      query.setString(1, schema);
      ResultSet rows = query.executeQuery();
      while (rows.next()) {
        found.add(new Manifest.Sequence(rows.getString(1), rows.getObject(2, Long.class)));
      }
    }
    return found;
  }

  /** The newest migration that made the tables of a schema; empty if none did. */
  static Optional<String> schemaVersion(Connection connection, String schema) throws SQLException {
    if (!tables(connection, schema).containsKey("flyway_schema_history")) {
      return Optional.empty();
    }
    try (PreparedStatement query =
        connection.prepareStatement(
            "SELECT version FROM "
                + BookTable.quoted(schema)
                + ".flyway_schema_history WHERE success AND version IS NOT NULL"
                + " ORDER BY installed_rank DESC LIMIT 1")) {
      ResultSet rows = query.executeQuery();
      return rows.next() ? Optional.of(rows.getString(1)) : Optional.empty();
    }
  }
}
