package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** The person holds as many tokens as one person may. */
public final class TooManyTokens extends Refusal {

  public TooManyTokens(int limit) {
    super(
        Kind.CONFLICT,
        "too-many-tokens",
        "Too many tokens",
        "You hold " + limit + " tokens, the most one person may hold. Revoke one you do not use.");
  }
}
