package org.barreltally.ledger;

import java.util.List;
import java.util.UUID;

/**
 * Follows what is posted, in the same transaction, to keep a snapshot of its own in step: for
 * example whether a barrel is drained. Every implementation is called for every movement, reversals
 * included, after its balances are written.
 */
public interface AfterPosting {
  default void posted(Movement movement) {}

  /** Several movements posted together, in their order. */
  default void posted(List<Movement> movements) {
    movements.forEach(this::posted);
  }

  /** After {@link #posted} of a reversal: which movement it took back. */
  default void reversed(UUID original) {}
}
