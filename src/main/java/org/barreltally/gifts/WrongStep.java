package org.barreltally.gifts;

import org.barreltally.refusal.Refusal;

/** A step does not follow from the recipient's state. */
public final class WrongStep extends Refusal {
  public WrongStep(int n, RecipientState state, Step step, String mend) {
    super(
        Kind.CONFLICT,
        "wrong-step",
        "Not at that step",
        "Recipient %d is %s; %s does not follow from that. %s"
            .formatted(n, state.code(), step.code(), mend));
  }
}
