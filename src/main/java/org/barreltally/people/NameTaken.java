package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** Somebody signs in, or signed in, under this name already. */
public final class NameTaken extends Refusal {

  NameTaken(String name) {
    super(
        Kind.CONFLICT,
        "name-taken",
        "That name is taken",
        "Somebody signs in as “" + name + "” already, or did. Choose another name.",
        "name");
  }
}
