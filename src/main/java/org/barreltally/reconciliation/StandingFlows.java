package org.barreltally.reconciliation;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.barreltally.measure.Uncertain;
import org.barreltally.reconciliation.internal.BookFlows.Moved;
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

  /** Nodes at which sales were written down. */
  private final Set<String> sold;

  StandingFlows(NetworkDraft draft, Widths widths, SeasonFacts facts) {
    this.draft = draft;
    this.widths = widths;
    this.facts = facts;
    this.sold =
        facts.moved().stream()
            .filter(moved -> moved.kind().equals("sale"))
            .map(Moved::from)
            .collect(Collectors.toSet());
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
      Uncertain carried = counted ? new Uncertain(stands.opening(), carriedU(stands)) : null;
      draft.add(draft.names().of(node) + ": carried over", null, node, carried, How.CARRIED);
    }
    if (counted) {
      draft.add(
          draft.names().of(node) + ": counted",
          node,
          null,
          new Uncertain(stands.closing(), countedU(stands)),
          stands.twice() == stands.items() ? How.COUNTED_TWICE : How.COUNTED_ONCE);
    } else if (stands.closing() > NOTHING && !(stands.over() && sold.contains(node))) {
      // At a table counted home, with its sales written down, what is left by the book is not
      // there.
      draft.add(draft.names().of(node) + ": still there", node, null, null, How.NOT_MEASURED);
    }
  }

  private double carriedU(Stands stands) {
    return stands.usual() * widths.counted(stands.items(), stands.opening() / stands.usual());
  }

  /** Lots counted by one and by two, each with its part of the jars. */
  private double countedU(Stands stands) {
    double pieces = stands.closing() / stands.usual();
    double part = (double) stands.twice() / stands.items();
    double once = stands.items() - stands.twice();
    return stands.usual()
        * Math.hypot(
            widths.counted(once, pieces * (1 - part)),
            widths.countedByTwo(stands.twice(), pieces * part));
  }
}
