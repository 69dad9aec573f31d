package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** No session of this id belongs to the person who asks, or it has ended. */
public final class UnknownSession extends Refusal {

  UnknownSession() {
    super(
        Kind.NOT_FOUND,
        "unknown-session",
        "No such session",
        "You have no such session, or it has ended; the list of your sessions has those there are.",
        "session");
  }
}
