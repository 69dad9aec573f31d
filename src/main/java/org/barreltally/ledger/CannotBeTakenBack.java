package org.barreltally.ledger;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** A movement that cannot be reversed. */
public final class CannotBeTakenBack extends Refusal {
  public CannotBeTakenBack(UUID id, String why) {
    super(
        Kind.CONFLICT,
        "cannot-be-taken-back",
        "This cannot be taken back",
        "Movement " + id + " cannot be taken back: " + why + ".");
  }
}
