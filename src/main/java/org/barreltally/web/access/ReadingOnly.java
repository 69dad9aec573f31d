package org.barreltally.web.access;

import org.barreltally.refusal.Refusal;

/** The person's role reads everything and changes nothing. */
public final class ReadingOnly extends Refusal {

  public ReadingOnly(String role) {
    super(
        Kind.FORBIDDEN,
        "not-allowed",
        "Not allowed",
        "The role " + role + " reads and changes nothing. Ask the owner to do this.");
  }
}
