package org.barreltally.ledger.internal;

import java.sql.SQLException;
import java.util.List;

/** By how many pieces the availability of a container and grade changes. */
record PoolChange(String container, String grade, long onHand, long held, long out) {

  PoolChange plus(PoolChange other) {
    return new PoolChange(
        container, grade, onHand + other.onHand, held + other.held, out + other.out);
  }

  /** Binds five arrays: container, grade, on hand, held, out. */
  static void bind(Columns columns, List<PoolChange> changes) throws SQLException {
    columns.add("text", changes, PoolChange::container);
    columns.add("text", changes, PoolChange::grade);
    columns.add("bigint", changes, PoolChange::onHand);
    columns.add("bigint", changes, PoolChange::held);
    columns.add("bigint", changes, PoolChange::out);
  }
}
