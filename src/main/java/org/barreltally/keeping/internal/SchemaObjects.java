package org.barreltally.keeping.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * What migrations made in a schema: tables, views, counters, functions, types. What belongs to an
 * extension, or to another role, is none of it and stays where it is.
 */
final class SchemaObjects {

  private static final String LIST =
      """
      WITH here AS (SELECT oid FROM pg_namespace WHERE nspname = ?),
           mine AS (SELECT oid FROM pg_roles WHERE rolname = current_user)
      SELECT CASE c.relkind WHEN 'v' THEN 'VIEW' WHEN 'm' THEN 'MATERIALIZED VIEW'
                            WHEN 'S' THEN 'SEQUENCE' ELSE 'TABLE' END AS kind,
        format('%I', c.relname) AS name, 1 AS turn
      FROM pg_class c
      WHERE c.relnamespace IN (SELECT oid FROM here) AND c.relowner IN (SELECT oid FROM mine)
        AND c.relkind IN ('r', 'p', 'v', 'm', 'S')
        AND NOT EXISTS (SELECT 1 FROM pg_depend d WHERE d.classid = 'pg_class'::regclass
          AND d.objid = c.oid AND (d.deptype = 'e' OR c.relkind = 'S' AND d.deptype IN ('a', 'i')))
      UNION ALL
      SELECT 'ROUTINE', format('%I(%s)', p.proname, pg_get_function_identity_arguments(p.oid)), 2
      FROM pg_proc p
      WHERE p.pronamespace IN (SELECT oid FROM here) AND p.proowner IN (SELECT oid FROM mine)
        AND NOT EXISTS (SELECT 1 FROM pg_depend d WHERE d.classid = 'pg_proc'::regclass
          AND d.objid = p.oid AND d.deptype = 'e')
      UNION ALL
      SELECT 'TYPE', format('%I', t.typname), 3
      FROM pg_type t LEFT JOIN pg_class c ON c.oid = t.typrelid
      WHERE t.typnamespace IN (SELECT oid FROM here) AND t.typowner IN (SELECT oid FROM mine)
        AND (t.typtype IN ('d', 'e', 'r') OR t.typtype = 'c' AND c.relkind = 'c')
        AND NOT EXISTS (SELECT 1 FROM pg_depend d WHERE d.classid = 'pg_type'::regclass
          AND d.objid = t.oid AND d.deptype = 'e')
      ORDER BY turn, name
      """;

  private record Found(String kind, String name) {}

  private SchemaObjects() {}

  /** Drops all of them. */
  static void drop(Connection connection, String schema) throws SQLException {
    for (Found each : list(connection, schema)) {
      run(connection, "DROP %s IF EXISTS %s CASCADE".formatted(each.kind(), in(schema, each)));
    }
  }

  /** Moves all of them into another schema. */
  static void move(Connection connection, String from, String to) throws SQLException {
    for (Found each : list(connection, from)) {
      run(
          connection,
          "ALTER %s %s SET SCHEMA %s".formatted(each.kind(), in(from, each), BookTable.quoted(to)));
    }
  }

  private static List<Found> list(Connection connection, String schema) throws SQLException {
    List<Found> found = new ArrayList<>();
    try (PreparedStatement query = connection.prepareStatement(LIST)) {
      query.setString(1, schema);
      ResultSet rows = query.executeQuery();
      while (rows.next()) {
        found.add(new Found(rows.getString("kind"), rows.getString("name")));
      }
    }
    return found;
  }

  private static String in(String schema, Found each) {
    return BookTable.quoted(schema) + "." + each.name();
  }

  static void run(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
