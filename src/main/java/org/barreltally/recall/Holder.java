package org.barreltally.recall;

import java.util.List;
import java.util.SortedSet;
import org.barreltally.lots.NamedHolders.Holding;

/**
 * Somebody who holds something of a recalled lot, or may.
 *
 * @param number from 1, in the order of names; it names the holder while nothing changes
 * @param address line by line; empty where it is not known
 * @param contact null where it is not known
 * @param channels how it came there
 */
public record Holder(
    int number,
    String name,
    List<String> address,
    String contact,
    SortedSet<String> channels,
    List<Holding> holdings) {

  public Holder {
    address = List.copyOf(address);
    holdings = List.copyOf(holdings);
  }

  /** Whether it is sure that they were given some. */
  public boolean exact() {
    return holdings.stream().anyMatch(Holding::exact);
  }

  public boolean holdsJars() {
    return holdings.stream().anyMatch(holding -> holding.container() != null);
  }
}
