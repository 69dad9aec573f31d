package org.barreltally;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.postgresql.PGStatement;

/** What is stored, table by table: a refusal must leave all of it as it was. */
@ApplicationScoped
public class BookRows {

  private static final String TABLES =
      """
      SELECT relname FROM pg_class
      WHERE relnamespace = 'public'::regnamespace AND relkind = 'r' AND relpersistence = 'p'
        AND has_table_privilege(oid, 'SELECT')
      """;

  @Inject DataSource database;

  /** Asked so often that PostgreSQL should plan it once, which one connection does for itself. */
  private PreparedStatement prints;

  /**
   * How many rows each table has, and the sum of the transactions that wrote them: whatever is
   * added, changed or removed makes another print, and no row needs to be read out for it.
   */
  public synchronized Map<String, String> fingerprint() {
    Map<String, String> found = new TreeMap<>();
    try (ResultSet rows = prints().executeQuery()) {
      while (rows.next()) {
        found.put(rows.getString(1), rows.getString(2));
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return found;
  }

  private PreparedStatement prints() throws SQLException {
    if (prints == null) {
      String all =
          column(TABLES).stream()
              .map(
                  table ->
                      "SELECT '%s', count(*) || ' rows, ' || coalesce(sum(xmin::text::bigint), 0) FROM %s"
                          .formatted(table, table))
              .collect(Collectors.joining(" UNION ALL "));
      prints = database.getConnection().prepareStatement(all);
      prints.unwrap(PGStatement.class).setPrepareThreshold(1);
    }
    return prints;
  }

  @PreDestroy
  void close() throws SQLException {
    if (prints != null) {
      prints.getConnection().close();
    }
  }

  /** The number that a query of one row and column gives. */
  public long number(String sql) {
    return Long.parseLong(column(sql).get(0));
  }

  /** The first column of a query, as text. */
  public List<String> column(String sql) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      List<String> values = new ArrayList<>();
      while (rows.next()) {
        values.add(rows.getString(1));
      }
      return values;
    } catch (SQLException e) {
      throw new IllegalStateException(sql, e);
    }
  }
}
