package org.barreltally.supplies;

import org.barreltally.refusal.Refusal;

/** A canning run would use up more of a supply than is on hand, and the owner wants it refused. */
public final class SuppliesShort extends Refusal {

  private final String supply;
  private final long onHand;
  private final long needed;

  /**
   * @param onHand pieces in the book
   * @param needed pieces the whole run uses
   * @param field the fill with which it ran out
   */
  public SuppliesShort(Supply supply, long onHand, long needed, String field) {
    super(
        Kind.CONFLICT,
        "supplies-short",
        "Not enough to pack with",
        words(supply, onHand, needed),
        field);
    this.supply = supply.code();
    this.onHand = onHand;
    this.needed = needed;
  }

  static String words(Supply supply, long onHand, long needed) {
    return "%s (%s): the run uses %d and the book has %d. Count them, enter what came, or fill fewer."
        .formatted(supply.name(), supply.code(), needed, onHand);
  }

  public String supply() {
    return supply;
  }

  public long onHand() {
    return onHand;
  }

  public long needed() {
    return needed;
  }
}
