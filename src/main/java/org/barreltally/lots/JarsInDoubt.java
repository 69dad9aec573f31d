package org.barreltally.lots;

import java.util.Collection;
import java.util.List;

/**
 * Tells of which jars it is open whether they are of a lot, because they were sold or carried
 * without writing the lot down. Implemented where sales are recorded, because lots do not know
 * them.
 */
public interface JarsInDoubt {

  /**
   * Jars of one lot and size at one table, in pieces.
   *
   * @param standingLeast surely there
   * @param standingMost possibly there
   * @param soldLeast surely sold, beyond the sales that named the lot
   * @param soldMost possibly sold, beyond the sales that named the lot
   */
  record Doubt(
      String lot,
      String place,
      String container,
      long standingLeast,
      long standingMost,
      long soldLeast,
      long soldMost) {}

  /** What is open about lots, by place, size and lot; nothing about jars that are certain. */
  List<Doubt> about(Collection<String> lots);
}
