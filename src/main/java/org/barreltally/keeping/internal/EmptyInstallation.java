package org.barreltally.keeping.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.keeping.InstallationInUse;
import org.barreltally.keeping.InstallationNotEmpty;

/**
 * An installation into which a backup may go: never started, or started and then left alone. No
 * table has more rows than the migrations put in, but for the owner's sign-in of the first start.
 */
final class EmptyInstallation {

  private static final String SIGNED_IN =
      """
      SELECT usename FROM pg_stat_activity
      WHERE datname = current_database() AND pid <> pg_backend_pid()
        AND usename IN (current_user, ?) LIMIT 1
      """;

  private static final int LOOKS = 100;
  private static final long MILLISECONDS_BETWEEN_LOOKS = 50;

  private final Connection connection;
  private final String schema;

  EmptyInstallation(Connection connection, String schema) {
    this.connection = connection;
    this.schema = schema;
  }

  /**
   * How many rows each table of a schema has, but those of sign-ins and migrations; one user is not
   * counted.
   */
  static Map<String, Long> counts(Connection connection, String schema) throws SQLException {
    Map<String, Long> counts = new TreeMap<>();
    for (BookTable table : Catalog.tables(connection, schema).values()) {
      if (!org.barreltally.keeping.Manifest.LEFT_OUT.contains(table.name())) {
        counts.put(table.name(), count(connection, table));
      }
    }
    counts.computeIfPresent("users", (name, users) -> Math.max(0, users - 1));
    return counts;
  }

  private static long count(Connection connection, BookTable table) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("SELECT count(*) FROM " + table.sql())) {
      rows.next();
      return rows.getLong(1);
    }
  }

  /**
   * Compares with what a new installation holds.
   *
   * @param blank the counts of freshly made tables of the same version
   * @throws InstallationNotEmpty if there is more
   */
  void mustHoldNoMoreThan(Map<String, Long> blank) throws SQLException {
    List<String> more = new ArrayList<>();
    counts(connection, schema)
        .forEach(
            (table, rows) -> {
              Long known = blank.get(table);
              if (known == null) {
                more.add("a table " + table + " that is not Barreltally's");
              } else if (rows > known) {
                more.add("%s: %d".formatted(table, rows - known));
              }
            });
    if (!more.isEmpty()) {
      throw new InstallationNotEmpty(more);
    }
  }

  /** Keeps everybody else from the tables until the transaction ends. */
  void lock() throws SQLException {
    for (BookTable table : Catalog.tables(connection, schema).values()) {
      SchemaObjects.run(connection, "LOCK TABLE " + table.sql() + " IN ACCESS EXCLUSIVE MODE");
    }
  }

  /**
   * Looks who else is signed in as the owner or the application. A connection that was just closed
   * may linger for a moment, so it looks for some seconds.
   *
   * @throws InstallationInUse if somebody stays
   */
  void mustBeLeftAlone(String applicationRole) throws SQLException {
    for (int look = 1; ; look++) {
      try (PreparedStatement query = connection.prepareStatement(SIGNED_IN)) {
        query.setString(1, applicationRole);
        ResultSet rows = query.executeQuery();
        if (!rows.next()) {
          return;
        }
        if (look == LOOKS) {
          throw new InstallationInUse(rows.getString(1));
        }
      }
      pause();
    }
  }

  private static void pause() throws SQLException {
    try {
      Thread.sleep(MILLISECONDS_BETWEEN_LOOKS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new SQLException("interrupted", e);
    }
  }
}
