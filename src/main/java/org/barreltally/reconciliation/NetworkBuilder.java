package org.barreltally.reconciliation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.reconciliation.internal.BookFlows.Moved;
import org.barreltally.reconciliation.internal.BookFlows.Sold;

/**
 * Builds a season's network out of what the book has. What the book put down as unexplained is left
 * out: it is how the measurements contradict each other, and the network is to find out why. What
 * only follows from other figures (all of a barrel drawn, jars sold by difference) is a flow nobody
 * measured.
 */
final class NetworkBuilder {

  private static final String OUTSIDE = "out:";
  private static final String UNEXPLAINED = "out:unexplained";
  private static final String BOILED = "out:boiled";
  private static final String BOILING = "boiling";
  private static final double NOTHING = 1e-6;

  private final NetworkDraft draft;
  private final Widths widths;
  private final SeasonFacts facts;

  /** Nodes at which sales were written down, and shops that told theirs. */
  private final Set<String> told = new HashSet<>();

  NetworkBuilder(NetworkDraft draft, Widths widths, SeasonFacts facts) {
    this.draft = draft;
    this.widths = widths;
    this.facts = facts;
  }

  void build() {
    for (Production each : facts.productions()) {
      String pan = each.expected() == null ? null : "pan:" + each.name();
      if (pan != null) {
        draft.add("Sugar fed: " + each.name(), null, pan, each.expected(), How.SUGAR_FED);
      }
      draft.add(
          "Boiled: " + each.name(),
          pan,
          BOILING,
          new Uncertain(each.grams(), each.u()),
          How.PRODUCTION);
    }
    for (Moved moved : facts.moved()) {
      if (moved.kind().equals("sale")) {
        told.add(moved.from());
      } else if (moved.kind().equals("shelf-count") && moved.to().equals(UNEXPLAINED)) {
        told.add(moved.from());
      }
    }
    net(facts.moved()).stream().filter(moved -> !isDifference(moved)).forEach(this::add);
    addContents();
  }

  /** Two ways of one kind between the same nodes, made one; settlements go back and forth. */
  private static List<Moved> net(List<Moved> moved) {
    Map<String, Moved> net = new TreeMap<>();
    for (Moved m : moved) {
      Moved back = net.remove(way(m.to(), m.from(), m.kind()));
      if (back == null) {
        net.put(way(m.from(), m.to(), m.kind()), m);
      } else if (Math.abs(back.grams() - m.grams()) > NOTHING) {
        Moved more = back.grams() > m.grams() ? back : m;
        net.put(
            way(more.from(), more.to(), m.kind()),
            new Moved(
                more.from(),
                more.to(),
                m.kind(),
                Math.abs(back.grams() - m.grams()),
                Math.abs(back.pieces() - m.pieces()),
                back.lines() + m.lines(),
                false));
      }
    }
    return List.copyOf(net.values());
  }

  private static String way(String from, String to, String kind) {
    return from + "|" + to + "|" + kind;
  }

  /** What the book put down to make itself agree with a measurement. */
  private boolean isDifference(Moved moved) {
    return moved.to().equals(UNEXPLAINED)
        || moved.from().equals(UNEXPLAINED)
        || moved.kind().equals("settlement")
            && (told.contains(moved.from()) || told.contains(moved.to()));
  }

  private void add(Moved moved) {
    if (moved.to().equals("out:bulk-buyer")) {
      addBulkSale(moved);
    } else if (moved.to().startsWith("bulk:")) {
      addFilled(moved);
    } else if (moved.from().startsWith("bulk:")) {
      // All of a barrel is what the book had, not what somebody weighed.
      Uncertain out = moved.emptied() ? null : grams(moved, widths.platformTwice());
      put(moved, out, How.WEIGHED_OUT);
    } else if (moved.from().equals("out:water")) {
      put(moved, grams(moved, widths.platform()), How.WATER);
    } else if (moved.from().startsWith("run:") && moved.to().startsWith(OUTSIDE)) {
      addLost(moved);
    } else {
      addJars(moved);
    }
  }

  private void addBulkSale(Moved moved) {
    Sold sold =
        facts.sold().stream()
            .filter(each -> each.lot().equals(lot(moved.from())))
            .findFirst()
            .orElse(null);
    Uncertain ours = sold == null ? null : mass(sold.ours(), sold.brix());
    Uncertain theirs = sold == null ? null : mass(sold.theirs(), sold.brix());
    if (ours != null && theirs != null) {
      String yard = "sold:" + sold.lot();
      draft.add(name(moved), moved.from(), yard, ours, How.WEIGHED);
      draft.add(draft.names().of(yard) + ": weighed there", yard, null, theirs, How.BUYERS_SCALE);
    } else {
      put(moved, ours != null ? ours : theirs, ours != null ? How.WEIGHED : How.BUYERS_SCALE);
    }
  }

  private Uncertain mass(Double gramsInAir, double brix) {
    return gramsInAir == null
        ? null
        : new Uncertain(new Syrup(brix).massFromWeight(gramsInAir), widths.platformTwice());
  }

  /** Into a barrel, by the scale and, where it was read, the dipstick after it. */
  private void addFilled(Moved moved) {
    String from = end(moved.from());
    Uncertain weighed = facts.reading(lot(moved.to()), 0, "weighing");
    Uncertain dipped = facts.reading(lot(moved.to()), 0, "dipstick");
    if (weighed != null && dipped != null) {
      String between = "dip:" + lot(moved.to());
      draft.add(name(moved), from, between, weighed, How.WEIGHED);
      draft.add(
          draft.names().of(moved.to()) + ": by the dipstick",
          between,
          moved.to(),
          dipped,
          How.DIPPED);
    } else if (weighed != null || dipped != null) {
      put(moved, weighed != null ? weighed : dipped, weighed != null ? How.WEIGHED : How.DIPPED);
    } else {
      Uncertain heel = facts.isHeel(moved) ? grams(moved, widths.platform()) : null;
      put(moved, heel, How.HEEL_WEIGHED);
    }
  }

  /** Lost while canning. */
  private void addLost(Moved moved) {
    if (moved.to().equals("out:filter")) {
      put(moved, grams(moved, widths.platform()), How.FILTER);
    } else if (!moved.to().equals("out:overfill")) { // that goes with the jars
      put(moved, grams(moved, widths.usualJar()), How.BROKEN_FILLED);
    }
  }

  private void addJars(Moved moved) {
    double each = moved.pieces() == 0 ? 0 : moved.grams() / moved.pieces();
    double u = each * widths.counted(moved.lines(), moved.pieces());
    boolean byDifference =
        switch (moved.kind()) {
          case "shelf-count" -> !told.contains(moved.from());
          case "settlement" -> true;
          case "gift" -> moved.to().startsWith(OUTSIDE); // packed as it was picked
          default -> each == 0;
        };
    if (byDifference) {
      put(moved, null, How.NOT_MEASURED);
    } else if (moved.kind().equals("sale") && draft.names().isAway(moved.from())) {
      put(moved, grams(moved, Math.hypot(u, widths.missed(moved.grams()))), How.TALLIED);
    } else if (moved.kind().equals("shelf-count")) {
      put(moved, grams(moved, u), How.TOLD_BY_SHOP);
    } else {
      put(moved, grams(moved, u), How.COUNTED_MOVED);
    }
  }

  /**
   * Jars pass from the canner to the shelf as their contents times their number; what they hold
   * over or under that is a flow of its own, as uncertain as the bench scale, the same way for each
   * jar.
   */
  private void addContents() {
    Map<String, Double> jars = new LinkedHashMap<>();
    Map<String, Double> over = new HashMap<>();
    for (Moved m : facts.moved()) {
      if (m.from().startsWith("run:") && m.pieces() > 0) {
        jars.merge(m.from(), m.pieces(), Double::sum);
      } else if (m.from().startsWith("run:") && m.to().equals("out:overfill")) {
        over.merge(m.from(), m.grams(), Double::sum);
      }
    }
    jars.forEach(
        (run, count) ->
            draft.add(
                draft.names().of(run) + ": over the contents",
                run,
                null,
                new Uncertain(over.getOrDefault(run, 0.0), widths.bench() * count),
                How.CONTENTS));
  }

  private void put(Moved moved, Uncertain value, How known) {
    draft.add(name(moved), end(moved.from()), end(moved.to()), value, known);
  }

  private static Uncertain grams(Moved moved, double u) {
    return new Uncertain(moved.grams(), u);
  }

  /** Null outside; the boiling where it is told apart. */
  private String end(String node) {
    if (node.equals(BOILED) && draft.has(BOILING)) {
      return BOILING;
    }
    return node.startsWith(OUTSIDE) ? null : node;
  }

  private static String lot(String node) {
    return node.split(":")[1];
  }

  private String name(Moved moved) {
    return draft.names().way(moved.from(), moved.to(), moved.kind());
  }
}
