package org.barreltally.gifts;

import org.barreltally.refusal.Refusal;

/** The order has no recipient of that number. */
public final class UnknownRecipient extends Refusal {
  public UnknownRecipient(int n, int recipients) {
    super(
        Kind.NOT_FOUND,
        "unknown-recipient",
        "No such recipient",
        "This order has recipients 1 to " + recipients + "; there is no " + n + ".");
  }
}
