package org.barreltally.people.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;

/** One SQL statement with bound values, run in the transaction at hand or in one of its own. */
record Statement(DataSource database, String sql, Object... values) {

  /** SQLState read_only_sql_transaction (PostgreSQL documentation, appendix A). */
  private static final String ONLY_READS = "25006";

  /** Reads one row. */
  interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  <T> Optional<T> first(Row<T> row) {
    return all(row).stream().findFirst();
  }

  <T> List<T> all(Row<T> row) {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = prepare(connection);
        ResultSet rows = statement.executeQuery()) {
      List<T> read = new ArrayList<>();
      while (rows.next()) {
        read.add(row.read(rows));
      }
      return read;
    } catch (SQLException e) {
      throw new IllegalStateException("the database did not answer about people", e);
    }
  }

  /** Runs a change and says how many rows it touched. */
  int run() {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = prepare(connection)) {
      return statement.executeUpdate();
    } catch (SQLException e) {
      throw new IllegalStateException("the database did not take a change about people", e);
    }
  }

  /**
   * Writes down what is good to know and not needed, such as when something was last used: a
   * database that only reads, a standby, takes none of it and nobody is told.
   */
  void note() {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = prepare(connection)) {
      statement.executeUpdate();
    } catch (SQLException e) {
      if (!ONLY_READS.equals(e.getSQLState())) {
        throw new IllegalStateException("the database did not take a note about people", e);
      }
    }
  }

  private PreparedStatement prepare(Connection connection) throws SQLException {
    PreparedStatement statement = connection.prepareStatement(sql);
    for (int i = 0; i < values.length; i++) {
      Object value = values[i];
      statement.setObject(
          i + 1, value instanceof Instant instant ? instant.atOffset(ZoneOffset.UTC) : value);
    }
    return statement;
  }
}
