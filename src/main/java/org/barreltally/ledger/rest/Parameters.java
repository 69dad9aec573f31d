package org.barreltally.ledger.rest;

import java.util.UUID;
import org.barreltally.refusal.InvalidField;

/** Reads query parameters, refusing by name what cannot be read; null stays null. */
final class Parameters {

  private Parameters() {}

  static UUID uuid(String text, String name) {
    try {
      return text == null ? null : UUID.fromString(text);
    } catch (IllegalArgumentException e) {
      throw new InvalidField(
          name, "Give a UUID such as 017f22e2-79b0-7cc3-98c4-dc0c0c07398f, or leave it out.");
    }
  }
}
