package org.barreltally.stock.rounds;

import org.barreltally.refusal.Refusal;

/** A round was to be posted before its counters agree. */
public final class NotAgreedYet extends Refusal {
  public NotAgreedYet(CountRound round) {
    super(
        Kind.CONFLICT,
        "not-agreed-yet",
        "The counters do not agree yet",
        switch (round.state()) {
          case "first" -> "Nobody has counted yet. Two people count, then it can be posted.";
          case "second" -> "Only one has counted. Let a second count without seeing those figures.";
          default ->
              "The two counts differ in %d lines. Count those again first: /api/stock/count-rounds/%s says which."
                  .formatted(round.differing().size(), round.id());
        });
  }
}
