package org.barreltally.sugarbush.boiling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** That a log which is not whole is found: each row is written, looked for, and rolled back. */
@QuarkusTest
class LogInvariantTest {

  private static final String BOIL = "01000000-0000-7000-8000-00000000000a";
  private static final String ENTRY = "01000000-0000-7000-8000-00000000000b";

  @Inject DataSource database;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "null",
      value = {
        "draw-off| 2013| 2013-03-01| drawn| 66.9| whole",
        "feed| 2013| 2013-03-01| boiled| 66.9| whole",
        "note| 2013| 2013-03-01| null| 0| whole",
        "draw-off| 2013| 2013-03-01| null| 0| broken",
        "draw-off| 2013| 2013-03-01| boiled| 66.9| broken",
        "draw-off| 2013| 2013-03-01| drawn| 67.0| broken",
        "draw-off| 2014| 2013-03-01| drawn| 66.9| broken",
        "draw-off| 2013| 2013-03-02| drawn| 66.9| broken",
        "note| 2013| 2013-03-01| drawn| 66.9| broken",
      })
  void a_part_that_does_not_fit_is_found(
      String kind, int season, String on, String role, double sugar, String verdict)
      throws Exception {
    try (Connection connection = database.getConnection()) {
      connection.setAutoCommit(false);
      try (Statement write = connection.createStatement()) {
        entry(write, BOIL, "boil", "NULL", 2013, "2013-03-01");
        entry(write, ENTRY, kind, "'" + BOIL + "'", season, on);
        if (role != null) {
          write.execute(
              "INSERT INTO sugarhouse_amounts VALUES ('%s', '%s', NULL, 75, 0, 100, 0, 66.9, 0, %s, 0)"
                  .formatted(ENTRY, role, sugar));
        }
        assertEquals("broken".equals(verdict) ? List.of(ENTRY) : List.of(), found(write));
      } finally {
        connection.rollback();
      }
    }
  }

  private static void entry(
      Statement write, String id, String kind, String boil, int season, String on)
      throws SQLException {
    write.execute(
        "INSERT INTO sugarhouse_entries VALUES ('%s', '%s', %s, %d, '%s', NULL, '{}', now(), '%s')"
            .formatted(id, kind, boil, season, on, id));
  }

  private static List<String> found(Statement ask) throws Exception {
    String sql;
    try (InputStream in =
        Thread.currentThread()
            .getContextClassLoader()
            .getResourceAsStream("db/invariants/log-entries-are-whole.sql")) {
      sql = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    List<String> found = new ArrayList<>();
    try (ResultSet rows = ask.executeQuery(sql)) {
      while (rows.next()) {
        found.add(rows.getString("entry"));
      }
    }
    return found;
  }
}
