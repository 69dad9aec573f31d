package org.barreltally.ledger;

import java.util.Objects;
import java.util.UUID;

/**
 * A positive amount of one item that goes from one place to another: grams of syrup, or pieces of a
 * jar.
 */
public record Transfer(String from, String to, UUID item, long amount) {

  public Transfer {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(item, "item");
    if (amount <= 0) {
      throw new IllegalArgumentException("a transfer moves a positive amount, not " + amount);
    }
    if (from.equals(to)) {
      throw new IllegalArgumentException("a transfer goes from one place to another: " + from);
    }
  }

  /** The transfer of a signed amount: a negative one goes the other way. Zero is not a transfer. */
  public static Transfer signed(String from, String to, UUID item, long amount) {
    return amount < 0
        ? new Transfer(to, from, item, -amount)
        : new Transfer(from, to, item, amount);
  }
}
