package org.barreltally.gifts;

import org.barreltally.refusal.InvalidField;

/** The words that people add to a step; kept for good, so they are short. */
final class Reason {

  static final int CARRIER_MAX = 60;

  private static final int MAX = 300;

  private Reason() {}

  /**
   * @throws InvalidField if they are too long
   */
  static void check(String reason) {
    if (reason != null && reason.length() > MAX) {
      throw new InvalidField("reason", "Say it in at most " + MAX + " characters.");
    }
  }

  /**
   * @throws InvalidField if there are none, or they are too long
   */
  static void require(String reason) {
    if (reason == null || reason.isBlank()) {
      throw new InvalidField("reason", "Say why it is taken back.");
    }
    check(reason);
  }

  /**
   * @throws InvalidField if the name is too long
   */
  static void carrier(String carrier) {
    if (carrier != null && carrier.length() > CARRIER_MAX) {
      throw new InvalidField("carrier", "Name it in at most " + CARRIER_MAX + " characters.");
    }
  }
}
