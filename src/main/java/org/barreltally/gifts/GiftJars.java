package org.barreltally.gifts;

import java.util.UUID;

/**
 * Jars of one lot in a recipient's boxes.
 *
 * @param item of the ledger
 * @param jar their size, and their grade as it is now
 * @param wanted in whose stead; the same where it is no substitute
 * @param pieces below zero where a step took them away
 */
public record GiftJars(
    int n, UUID item, String lot, Jar jar, Jar wanted, Stage stage, long pieces) {

  public GiftJars times(long sign) {
    return new GiftJars(n, item, lot, jar, wanted, stage, sign * pieces);
  }

  public GiftJars at(Stage other) {
    return new GiftJars(n, item, lot, jar, wanted, other, pieces);
  }

  public GiftJars of(long other) {
    return new GiftJars(n, item, lot, jar, wanted, stage, other);
  }

  /** Whether the other is of the same item in the same stead and stage, however many. */
  boolean isSameAs(GiftJars other) {
    return item.equals(other.item) && wanted.equals(other.wanted) && stage == other.stage;
  }
}
