package org.barreltally.ledger;

import java.util.List;
import java.util.UUID;

/**
 * Follows what is posted, in the same transaction, to keep a snapshot of its own in step: for
 * example whether a barrel is drained. Every implementation is called for every movement, reversals
 * included.
 */
public interface AfterPosting {

  /**
   * Movements that are posted together, in their order. What is added to {@code write} is run once
   * their balances are written.
   */
  default void posted(List<Movement> movements, Bundle write) {}

  /**
   * Before a movement is taken back: locks what {@link #posted} and {@link #reversed} will change,
   * because whoever posted it locked that before the balances. Called by priority, highest first.
   */
  default void reversing(UUID original) {}

  /** After the posting of a reversal: which movement it took back. */
  default void reversed(UUID original) {}
}
