package org.barreltally.ledger.internal;

import java.util.UUID;

/** What has a balance: an item at a place. Sorted as rows are locked. */
record BalanceKey(String place, UUID item) implements Comparable<BalanceKey> {
  @Override
  public int compareTo(BalanceKey other) {
    int byPlace = place.compareTo(other.place);
    return byPlace != 0 ? byPlace : item.compareTo(other.item);
  }
}
