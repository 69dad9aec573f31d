package org.barreltally.sugarbush;

import org.barreltally.refusal.Refusal;

/** A bush of that name is known as the maker's own already. */
public final class BushExists extends Refusal {
  public BushExists(String name) {
    super(
        Kind.CONFLICT,
        "bush-exists",
        "That bush is known",
        "%s is known as a bush of your own. Count its taps at /api/bushes/%s/taps."
            .formatted(name, name),
        "name");
  }
}
