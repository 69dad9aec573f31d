package org.barreltally.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * What is about to be posted: one thing that happened, with everything that moved in it.
 *
 * @param happenedAt when it happened; never later than it is recorded
 * @param reason in the person's words; may be null where the kind says it all
 */
public record Movement(
    MovementKind kind, Instant happenedAt, String reason, List<Transfer> transfers) {

  public Movement {
    transfers = List.copyOf(transfers);
  }

  public static Builder of(MovementKind kind, Instant happenedAt) {
    return new Builder(kind, happenedAt);
  }

  /** Gathers the transfers of a movement in the order in which they are told. */
  public static final class Builder {
    private final MovementKind kind;
    private final Instant happenedAt;
    private final List<Transfer> transfers = new ArrayList<>();
    private String reason;

    private Builder(MovementKind kind, Instant happenedAt) {
      this.kind = kind;
      this.happenedAt = happenedAt;
    }

    public Builder because(String reason) {
      this.reason = reason;
      return this;
    }

    /** Adds a transfer; an amount of zero adds none, a negative amount goes from {@code to}. */
    public Builder move(String from, String to, UUID item, long amount) {
      if (amount != 0) {
        transfers.add(Transfer.signed(from, to, item, amount));
      }
      return this;
    }

    public boolean movesNothing() {
      return transfers.isEmpty();
    }

    public Movement build() {
      return new Movement(kind, happenedAt, reason, transfers);
    }
  }
}
