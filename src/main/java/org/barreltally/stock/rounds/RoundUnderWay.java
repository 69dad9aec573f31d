package org.barreltally.stock.rounds;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** A counting round was to be opened where one is open. */
public final class RoundUnderWay extends Refusal {
  public RoundUnderWay(String place, UUID round) {
    super(
        Kind.CONFLICT,
        "round-under-way",
        "This place is being counted",
        "Round %s is open at %s. Finish it or give it up first.".formatted(round, place),
        "place");
  }
}
