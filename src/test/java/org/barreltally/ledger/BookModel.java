package org.barreltally.ledger;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.ledger.Pools.Pool;
import org.barreltally.ledger.Reservations.Line;
import org.barreltally.measure.Taste;

/**
 * A second, tiny ledger in memory, written apart from the real one: every verdict and every figure
 * is worked out from scratch each time. Verdicts are a refusal's code, or {@code accepted}.
 */
final class BookModel {

  static final String ACCEPTED = "accepted";

  /** Home or out, or neither; and whether less than nothing may stand there. */
  record Spot(String code, boolean home, boolean out, boolean belowZero) {}

  record Thing(UUID id, String lot, String container) {}

  record At(String place, UUID item) {}

  record Kind(String container, String grade) {}

  private record Done(Map<At, Long> net, boolean reversal) {}

  final Map<String, Spot> spots = new TreeMap<>();
  final Map<UUID, Thing> things = new HashMap<>();
  final Map<At, Long> balances = new HashMap<>();
  final Map<String, String> grades = new TreeMap<>();
  final Set<String> held = new HashSet<>();
  final Map<UUID, Map<Kind, Long>> promises = new HashMap<>();
  private final Map<UUID, Done> done = new HashMap<>();
  private final Set<UUID> takenBack = new HashSet<>();

  static Map<At, Long> net(List<Transfer> transfers) {
    Map<At, Long> net = new HashMap<>();
    for (Transfer t : transfers) {
      net.merge(new At(t.from(), t.item()), -t.amount(), Long::sum);
      net.merge(new At(t.to(), t.item()), t.amount(), Long::sum);
    }
    net.values().removeIf(amount -> amount == 0);
    return net;
  }

  String judge(Map<At, Long> net) {
    for (Map.Entry<At, Long> entry : net.entrySet()) {
      long after = balances.getOrDefault(entry.getKey(), 0L) + entry.getValue();
      if (entry.getValue() < 0 && after < 0 && !spots.get(entry.getKey().place()).belowZero()) {
        return "short-of-stock";
      }
    }
    return ACCEPTED;
  }

  void post(UUID id, Map<At, Long> net, boolean reversal) {
    net.forEach((at, amount) -> balances.merge(at, amount, Long::sum));
    done.put(id, new Done(net, reversal));
  }

  String judgeReversal(UUID id) {
    if (!done.containsKey(id)) {
      return "unknown-movement";
    }
    if (takenBack.contains(id) || done.get(id).reversal()) {
      return "cannot-be-taken-back";
    }
    return judge(opposite(id));
  }

  void reverse(UUID id, UUID reversal) {
    post(reversal, opposite(id), true);
    takenBack.add(id);
  }

  private Map<At, Long> opposite(UUID id) {
    Map<At, Long> opposite = new HashMap<>();
    done.get(id).net().forEach((at, amount) -> opposite.put(at, -amount));
    return opposite;
  }

  static Map<Kind, Long> byKind(List<Line> lines) {
    Map<Kind, Long> wanted = new HashMap<>();
    lines.forEach(l -> wanted.merge(new Kind(l.container(), l.grade()), l.pieces(), Long::sum));
    return wanted;
  }

  String judgeReserve(List<Line> lines) {
    for (Map.Entry<Kind, Long> wanted : byKind(lines).entrySet()) {
      if (pool(wanted.getKey()).available() < wanted.getValue()) {
        return "short-of-stock";
      }
    }
    return ACCEPTED;
  }

  void reserve(UUID id, List<Line> lines) {
    promises.put(id, byKind(lines));
  }

  String judgeEnd(UUID id, List<Line> lines) {
    Map<Kind, Long> open = promises.getOrDefault(id, Map.of());
    for (Map.Entry<Kind, Long> ended : byKind(lines).entrySet()) {
      if (open.getOrDefault(ended.getKey(), 0L) < ended.getValue()) {
        return "more-than-reserved";
      }
    }
    return ACCEPTED;
  }

  void end(UUID id, List<Line> lines) {
    byKind(lines).forEach((kind, pieces) -> promises.get(id).merge(kind, -pieces, Long::sum));
  }

  /** US color classes (USDA AMS 2015): 75, 50 and 25 %Tc; an off taste is Processing Grade. */
  static String gradeOf(double transmittance, Taste taste) {
    if (taste != Taste.CLEAN) {
      return "processing";
    }
    return transmittance >= 75
        ? "golden"
        : transmittance >= 50 ? "amber" : transmittance >= 25 ? "dark" : "very-dark";
  }

  void grade(String lot, String grade) {
    grades.put(lot, grade);
    if (grade.equals("processing")) {
      held.add(lot);
    }
  }

  /** What can be promised of a container and grade, counted on the shelf. */
  Pool pool(Kind kind) {
    long home = 0;
    long heldHome = 0;
    long out = 0;
    for (Map.Entry<At, Long> balance : balances.entrySet()) {
      Thing thing = things.get(balance.getKey().item());
      Spot spot = spots.get(balance.getKey().place());
      if (!kind.container().equals(thing.container())
          || !kind.grade().equals(grades.get(thing.lot()))) {
        continue;
      }
      home += spot.home() ? balance.getValue() : 0;
      heldHome += spot.home() && held.contains(thing.lot()) ? balance.getValue() : 0;
      out += spot.out() ? balance.getValue() : 0;
    }
    long reserved = promises.values().stream().mapToLong(open -> open.getOrDefault(kind, 0L)).sum();
    return new Pool(kind.container(), kind.grade(), home + out, heldHome, reserved, out);
  }
}
