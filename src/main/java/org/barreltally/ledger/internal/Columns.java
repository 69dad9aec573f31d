package org.barreltally.ledger.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Collection;
import java.util.function.Function;

/** Binds columns of rows as arrays, one parameter after the other. */
final class Columns {

  private final Connection connection;
  private final PreparedStatement statement;
  private int next;

  Columns(Connection connection, PreparedStatement statement, int first) {
    this.connection = connection;
    this.statement = statement;
    this.next = first;
  }

  <T> void add(String type, Collection<T> rows, Function<? super T, ?> value) throws SQLException {
    statement.setArray(next++, connection.createArrayOf(type, rows.stream().map(value).toArray()));
  }
}
