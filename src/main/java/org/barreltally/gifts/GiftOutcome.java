package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What recipients get by now: jars in their boxes, or reserved for them, and what to look at. */
public final class GiftOutcome {

  private static final int SHARED_SHOWN = 20;

  private GiftOutcome() {}

  /**
   * Jars of a recipient by size and grade: those in the boxes once picked, else those reserved,
   * else what the recipe says.
   */
  public static List<Allotted> contents(GiftOrder order, GiftLine line) {
    Map<Allotted, Long> counted = new LinkedHashMap<>();
    List<GiftJars> jars = order.jars(line.n());
    if (!jars.isEmpty()) {
      jars.forEach(j -> add(counted, line.n(), j.wanted(), j.jar(), j.pieces()));
    } else if (!order.promises(line.n()).isEmpty()) {
      order
          .promises(line.n())
          .forEach(p -> add(counted, line.n(), p.wanted(), p.jar(), p.pieces()));
    } else {
      Needs.of(line.n(), order.box(line), line.count())
          .forEach(need -> add(counted, line.n(), need.wanted(), need.wanted(), need.pieces()));
    }
    return counted.entrySet().stream()
        .map(e -> new Allotted(line.n(), e.getKey().wanted(), e.getKey().jar(), e.getValue()))
        .toList();
  }

  private static void add(Map<Allotted, Long> counted, int n, Jar wanted, Jar jar, long pieces) {
    counted.merge(new Allotted(n, wanted, jar, 0), pieces, Long::sum);
  }

  /** What the maker should look at; recipients are named by number alone. */
  public static List<String> cautions(GiftOrder order) {
    List<String> cautions = new ArrayList<>();
    Map<Address, List<Integer>> households = new LinkedHashMap<>();
    for (GiftLine line : order.lines()) {
      boolean waits = line.state().compareTo(RecipientState.SENT) < 0;
      if (waits
          && line.latestSend() != null
          && line.sendBy() != null
          && line.sendBy().isAfter(line.latestSend())) {
        cautions.add(
            "Recipient %d is to be sent by %s, but %s needs it by %s to be there on %s."
                .formatted(
                    line.n(), line.sendBy(), line.carrier(), line.latestSend(), line.wantedBy()));
      }
      Address address = order.person(line.n()).address();
      if (waits && address != null && line.delivery() == Delivery.POST) {
        households.computeIfAbsent(address, a -> new ArrayList<>()).add(line.n());
      }
    }
    households.values().stream()
        .filter(numbers -> numbers.size() > 1)
        .limit(SHARED_SHOWN)
        .forEach(
            numbers ->
                cautions.add(
                    "Recipients %s share an address. They stay parcels of their own."
                        .formatted(
                            String.join(", ", numbers.stream().map(String::valueOf).toList()))));
    return cautions;
  }
}
