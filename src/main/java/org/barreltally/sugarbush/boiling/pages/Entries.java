package org.barreltally.sugarbush.boiling.pages;

import jakarta.ws.rs.BadRequestException;
import java.util.UUID;

/** Entries of the log, as forms name them. */
final class Entries {

  private Entries() {}

  /** The id a form's list sent. */
  static UUID id(String sent) {
    try {
      return UUID.fromString(sent);
    } catch (IllegalArgumentException | NullPointerException made) {
      throw new BadRequestException(made);
    }
  }
}
