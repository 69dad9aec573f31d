package org.barreltally.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Asks the questions of {@link Invariants} over a connection, of the tables that it sees. */
public final class InvariantQuestions {

  private InvariantQuestions() {}

  /** Every invariant with the rows that break it, in the order of {@link Invariants#NAMES}. */
  public static List<Invariants.Finding> ask(Connection connection) throws SQLException {
    List<Invariants.Finding> findings = new ArrayList<>();
    for (String name : Invariants.NAMES) {
      findings.add(new Invariants.Finding(name, violations(connection, name)));
    }
    return findings;
  }

  private static List<Map<String, Object>> violations(Connection connection, String name)
      throws SQLException {
    List<Map<String, Object>> violations = new ArrayList<>();
    try (Statement statement = connection.createStatement()) {
      statement.setMaxRows(Invariants.VIOLATIONS_LISTED);
      ResultSet rows = statement.executeQuery(sql(name));
      ResultSetMetaData columns = rows.getMetaData();
      while (rows.next()) {
        Map<String, Object> row = new LinkedHashMap<>();
        for (int n = 1; n <= columns.getColumnCount(); n++) {
          row.put(columns.getColumnLabel(n), rows.getObject(n));
        }
        violations.add(row);
      }
    }
    return violations;
  }

  private static String sql(String name) {
    String path = "db/invariants/" + name + ".sql";
    try (InputStream in = InvariantQuestions.class.getClassLoader().getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
