package org.barreltally.ledger;

import java.util.Collection;
import java.util.UUID;

/**
 * A movement that is about to be posted with other statements around it: first its rows are locked,
 * then it is written. See {@link Ledger#begin}.
 */
public final class PendingMovement {

  /** Writes it. */
  interface Writing {
    void write(Collection<Item> made, Bundle write);
  }

  private final UUID id;
  private final Writing writing;

  PendingMovement(UUID id, Writing writing) {
    this.id = id;
    this.writing = writing;
  }

  /** The id it will have in the book. */
  public UUID id() {
    return id;
  }

  /**
   * Judges the movement and adds its rows to {@code write}. The rows must have been locked: the
   * bundle given to {@link Ledger#begin} was sent.
   *
   * @param made the items that come to be with it
   * @throws NotThatMuchThere if a place would hold less than nothing
   */
  public void write(Collection<Item> made, Bundle write) {
    writing.write(made, write);
  }
}
