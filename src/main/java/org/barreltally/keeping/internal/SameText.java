package org.barreltally.keeping.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** Sets how PostgreSQL writes values, so that the same value is the same text on every server. */
final class SameText {

  private static final String SETTINGS =
      """
      SET LOCAL timezone = 'UTC';
      SET LOCAL datestyle = 'ISO, YMD';
      SET LOCAL intervalstyle = 'iso_8601';
      SET LOCAL extra_float_digits = 1;
      SET LOCAL bytea_output = 'hex';
      SET LOCAL statement_timeout = 0;
      SET LOCAL idle_in_transaction_session_timeout = 0
      """;

  private SameText() {}

  /** For the transaction that is open. */
  static void in(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(SETTINGS);
    }
  }
}
