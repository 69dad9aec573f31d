package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** The present password was not given rightly, so it is not changed. */
public final class WrongPassword extends Refusal {

  public WrongPassword() {
    super(
        Kind.RULE,
        "wrong-password",
        "The present password is not right",
        "Give the password you sign in with now; nothing was changed.",
        "current");
  }
}
