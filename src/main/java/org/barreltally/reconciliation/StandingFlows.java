package org.barreltally.reconciliation;

import java.util.HashMap;
import java.util.Map;
import org.barreltally.measure.Uncertain;
import org.barreltally.reconciliation.internal.BookFlows.Reading;
import org.barreltally.reconciliation.internal.BookFlows.Stands;

/** What stood when the year began and stands when it ends, and what was weighed again between. */
final class StandingFlows {

  private static final double NOTHING = 1e-6;

  /** Grams; the book keeps a reading in whole ones. */
  private static final double ROUNDING = 1.5;

  private final NetworkDraft draft;
  private final Widths widths;
  private final SeasonFacts facts;

  StandingFlows(NetworkDraft draft, Widths widths, SeasonFacts facts) {
    this.draft = draft;
    this.widths = widths;
    this.facts = facts;
  }

  void add() {
    Map<String, Integer> stages = new HashMap<>();
    for (Reading reading : facts.readings()) {
      stages.merge(reading.lot(), reading.nth(), Math::max);
      if (reading.nth() > 0) {
        addWeighedAgain(reading);
      }
    }
    for (Stands stands : facts.stands()) {
      if (stands.node().startsWith("bulk:")) {
        String lot = stands.node().substring("bulk:".length());
        addSyrup(lot, stands, stages.getOrDefault(lot, 0));
      } else {
        addJars(stands);
      }
    }
  }

  private void addWeighedAgain(Reading reading) {
    String before = "bulk:" + reading.lot() + ":" + (reading.nth() - 1);
    String after = "bulk:" + reading.lot() + ":" + reading.nth();
    draft.add(
        draft.names().of(before) + ": weighed again",
        before,
        after,
        new Uncertain(reading.grams(), reading.u()),
        How.WEIGHED_AGAIN);
  }

  private void addSyrup(String lot, Stands stands, int lastStage) {
    String first = "bulk:" + lot + ":0";
    String last = "bulk:" + lot + ":" + lastStage;
    if (stands.opening() > NOTHING) {
      Uncertain weighed = facts.reading(lot, 0, "weighing");
      boolean whole = weighed != null && Math.abs(weighed.value() - stands.opening()) < ROUNDING;
      draft.add(
          draft.names().of(first) + ": carried over",
          null,
          first,
          whole ? weighed : null,
          How.WEIGHED);
    }
    if (stands.closing() > NOTHING) {
      draft.add(draft.names().of(last) + ": still there", last, null, null, How.NOT_MEASURED);
    }
  }

  private void addJars(Stands stands) {
    String node = stands.node();
    boolean counted = node.endsWith(":c");
    if (Math.abs(stands.opening()) > NOTHING) {
      draft.add(
          draft.names().of(node) + ": carried over",
          null,
          node,
          counted
              ? new Uncertain(stands.opening(), each(stands) * widths.counted(stands.items()))
              : null,
          How.CARRIED);
    }
    if (counted) {
      double once = (double) stands.items() - stands.twice();
      draft.add(
          draft.names().of(node) + ": counted",
          node,
          null,
          new Uncertain(stands.closing(), each(stands) * widths.counted(once, stands.twice())),
          once == 0 ? How.COUNTED_TWICE : How.COUNTED_ONCE);
    } else if (stands.closing() > NOTHING) {
      draft.add(draft.names().of(node) + ": still there", node, null, null, How.NOT_MEASURED);
    }
  }

  /** Grams of a jar there. */
  private double each(Stands stands) {
    return stands.usual();
  }
}
