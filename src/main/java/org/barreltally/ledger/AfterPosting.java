package org.barreltally.ledger;

/**
 * Follows what is posted, in the same transaction, to keep a snapshot of its own in step: for
 * example whether a barrel is drained. Every implementation is called for every movement, reversals
 * included, after its balances are written.
 */
public interface AfterPosting {
  void posted(Movement movement);
}
