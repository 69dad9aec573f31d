package org.barreltally.stock.rounds;

import org.barreltally.refusal.Refusal;

/** A counting round was to take more than it waits for. */
public final class RoundOver extends Refusal {
  public RoundOver(CountRound round) {
    super(
        Kind.CONFLICT,
        "round-over",
        "This round takes no more",
        "agreed".equals(round.state())
            ? "Both counters agree. Post round %s, or give it up and count anew."
                .formatted(round.id())
            : "Round %s is %s. Open another to count anew."
                .formatted(round.id(), "posted".equals(round.state()) ? "posted" : "given up"));
  }
}
