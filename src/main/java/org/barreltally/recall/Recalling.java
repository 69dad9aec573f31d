package org.barreltally.recall;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.UUID;
import org.barreltally.barrels.Barrels;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.lots.Holds;
import org.barreltally.lots.Lots;
import org.barreltally.lots.ReleaseRule;
import org.barreltally.lots.Trace;
import org.barreltally.lots.Tracing;
import org.barreltally.recall.internal.RecallRows;
import org.barreltally.refusal.InvalidField;

/**
 * Calls lots back. Everything with syrup of the lot is held in the same transaction; while the
 * recall is open none of it can be released. A rehearsal finds the same and holds nothing.
 */
@ApplicationScoped
public class Recalling implements ReleaseRule {

  private final Barrels barrels;
  private final Lots lots;
  private final Tracing tracing;
  private final Holds holds;
  private final RecallRows rows;
  private final Days days;
  private final Ids ids;

  Recalling(
      Barrels barrels,
      Lots lots,
      Tracing tracing,
      Holds holds,
      RecallRows rows,
      Days days,
      Ids ids) {
    this.barrels = barrels;
    this.lots = lots;
    this.tracing = tracing;
    this.holds = holds;
    this.rows = rows;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Begins a recall, or rehearses one.
   *
   * @throws InvalidField if not exactly one of lot and barrel is named,
   * @throws org.barreltally.barrels.UnknownVessel if there is no such barrel
   * @throws org.barreltally.lots.UnknownLot if there is no such lot
   */
  @Transactional
  public Recall start(StartRecall said) {
    String lot = lot(said);
    boolean rehearsal = Boolean.TRUE.equals(said.rehearsal());
    Recall recall =
        new Recall(
            ids.next(),
            lot,
            said.barrel(),
            said.reason(),
            rehearsal,
            days.now(),
            rehearsal ? touched(lot) : heldAt(lot),
            null);
    rows.keep(recall);
    if (!rehearsal) {
      String why = "Recall " + recall.id() + " of lot " + lot + ": " + said.reason();
      holds.holdAll(recall.lots(), why);
    }
    return recall;
  }

  private String lot(StartRecall said) {
    if ((said.lot() == null) == (said.barrel() == null)) {
      throw new InvalidField("lot", "Name the lot, or the barrel it is in; not both.");
    }
    if (said.barrel() != null) {
      return barrels.named(said.barrel(), "barrel").lot().code();
    }
    return lots.named(said.lot(), "lot").code();
  }

  private List<Recall.Touched> touched(String lot) {
    Trace trace = tracing.trace(lot);
    List<Recall.Touched> touched = new ArrayList<>();
    touched.add(new Recall.Touched(lot, 1));
    trace.descendants().forEach((code, share) -> touched.add(new Recall.Touched(code, share)));
    return touched;
  }

  /**
   * What has syrup of a lot, all of it locked: a run that was drawing from one of these lots has
   * ended by then, and its lot is found as well.
   */
  private List<Recall.Touched> heldAt(String lot) {
    SortedSet<String> locked = new TreeSet<>();
    while (true) {
      List<Recall.Touched> touched = touched(lot);
      SortedSet<String> found = new TreeSet<>(touched.stream().map(Recall.Touched::lot).toList());
      if (locked.containsAll(found)) {
        return touched;
      }
      lots.locked(found);
      locked.addAll(found);
    }
  }

  /**
   * Ends a recall. Its lots stay held until somebody releases each with a reason.
   *
   * @throws UnknownRecall if there is none of that id
   * @throws NothingToEnd if it is a rehearsal or ended already
   */
  @Transactional
  public Recall end(UUID id, String reason) {
    Recall recall = rows.locked(id).orElseThrow(() -> new UnknownRecall(id));
    if (recall.rehearsal() || recall.end() != null) {
      throw new NothingToEnd(recall);
    }
    rows.end(id, new Recall.End(reason, days.now()));
    return at(id);
  }

  /**
   * @throws UnknownRecall if there is none of that id
   */
  @Transactional
  public Recall at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownRecall(id));
  }

  /** In the order they began, after one of them (or null), at most so many. */
  @Transactional
  public List<Recall> list(UUID after, int limit) {
    return rows.list(after, limit);
  }

  @Override
  public void releasing(String lot) {
    rows.open(lot)
        .ifPresent(
            recall -> {
              throw new RecallOpen(lot, recall);
            });
  }
}
