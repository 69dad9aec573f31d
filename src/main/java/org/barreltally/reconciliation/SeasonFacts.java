package org.barreltally.reconciliation;

import java.util.List;
import org.barreltally.measure.Uncertain;
import org.barreltally.reconciliation.internal.BookFlows.Moved;
import org.barreltally.reconciliation.internal.BookFlows.Reading;
import org.barreltally.reconciliation.internal.BookFlows.Sold;
import org.barreltally.reconciliation.internal.BookFlows.Stands;

/** What the book knows of a season that a network is built of. */
record SeasonFacts(
    List<Moved> moved,
    List<Stands> stands,
    List<Reading> readings,
    List<Sold> sold,
    List<Production> productions,
    NodeNames names) {

  /** A reading of a lot; null if nobody took it. */
  Uncertain reading(String lot, int nth, String kind) {
    return readings.stream()
        .filter(r -> r.lot().equals(lot) && r.nth() == nth && r.kind().equals(kind))
        .map(r -> new Uncertain(r.grams(), r.u()))
        .findFirst()
        .orElse(null);
  }

  /** Whether a run kept this of the lot it made. */
  boolean isHeel(Moved moved) {
    return names.lotMadeBy(moved.from()) != null && moved.kind().equals("canning");
  }
}
