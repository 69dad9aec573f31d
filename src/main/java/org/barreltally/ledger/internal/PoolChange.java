package org.barreltally.ledger.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Function;

/** By how many pieces the availability of a container and grade changes. */
record PoolChange(String container, String grade, long onHand, long held, long out) {

  PoolChange plus(PoolChange other) {
    return new PoolChange(
        container, grade, onHand + other.onHand, held + other.held, out + other.out);
  }

  /** Binds five arrays from parameter {@code first} on: container, grade, on hand, held, out. */
  static void bind(
      PreparedStatement statement, int first, Connection connection, List<PoolChange> changes)
      throws SQLException {
    statement.setArray(
        first, connection.createArrayOf("text", column(changes, PoolChange::container)));
    statement.setArray(
        first + 1, connection.createArrayOf("text", column(changes, PoolChange::grade)));
    statement.setArray(
        first + 2, connection.createArrayOf("bigint", column(changes, PoolChange::onHand)));
    statement.setArray(
        first + 3, connection.createArrayOf("bigint", column(changes, PoolChange::held)));
    statement.setArray(
        first + 4, connection.createArrayOf("bigint", column(changes, PoolChange::out)));
  }

  private static Object[] column(List<PoolChange> changes, Function<PoolChange, Object> value) {
    return changes.stream().map(value).toArray();
  }
}
