package org.barreltally.ledger.internal;

import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;

/** By how many pieces the availability of a container and grade changes. */
record PoolChange(String container, String grade, long onHand, long held, long out) {

  private static final String WRITE =
      """
      INSERT INTO availability AS a (container, grade, on_hand, held, reserved, out)
        SELECT container, grade, on_hand, held, 0, out
        FROM unnest(?::text[], ?::text[], ?::bigint[], ?::bigint[], ?::bigint[])
          AS d (container, grade, on_hand, held, out)
        ORDER BY container, grade
        ON CONFLICT (container, grade) DO UPDATE SET
          on_hand = a.on_hand + excluded.on_hand, held = a.held + excluded.held,
          out = a.out + excluded.out
      """;

  PoolChange plus(PoolChange other) {
    return new PoolChange(
        container, grade, onHand + other.onHand, held + other.held, out + other.out);
  }

  /** Writes changes, after everything else: whoever makes jars or sells them wants these rows. */
  static void write(List<PoolChange> changes, Bundle write) {
    if (!changes.isEmpty()) {
      write.addLast(
          WRITE,
          Column.of("text", changes, PoolChange::container),
          Column.of("text", changes, PoolChange::grade),
          Column.of("bigint", changes, PoolChange::onHand),
          Column.of("bigint", changes, PoolChange::held),
          Column.of("bigint", changes, PoolChange::out));
    }
  }
}
