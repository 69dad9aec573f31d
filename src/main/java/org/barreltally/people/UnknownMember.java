package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** Nobody of this name was ever given a way to sign in. */
public final class UnknownMember extends Refusal {

  UnknownMember(String name) {
    super(
        Kind.NOT_FOUND,
        "unknown-person",
        "Nobody of this name",
        "Nobody signs in as “" + name + "”. People lists those who do.");
  }
}
