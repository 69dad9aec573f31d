package org.barreltally.shows;

import java.util.stream.Collectors;
import org.barreltally.refusal.Refusal;

/** A show was to come into a state that does not follow the one it is in. */
public final class StateOutOfOrder extends Refusal {
  public StateOutOfOrder(Show show, ShowState wanted) {
    super(
        Kind.CONFLICT,
        "state-out-of-order",
        "That does not come next",
        "%s is %s and cannot become %s. %s"
            .formatted(show.words(), show.state().code(), wanted.code(), next(show)),
        "state");
  }

  private static String next(Show show) {
    return show.state().next().isEmpty()
        ? "Nothing follows; book it anew."
        : "Next may come: "
            + show.state().next().stream()
                .sorted()
                .map(ShowState::code)
                .collect(Collectors.joining(", "))
            + ".";
  }
}
