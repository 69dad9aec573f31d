package org.barreltally.web.access;

import org.barreltally.refusal.Refusal;

/** The token is good for something else. */
public final class TokenTooNarrow extends Refusal {

  public TokenTooNarrow() {
    super(
        Kind.FORBIDDEN,
        "token-too-narrow",
        "Not with this token",
        "This token is good for what a phone at a show table asks. Sign in to do anything else.");
  }
}
