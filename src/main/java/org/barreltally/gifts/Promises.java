package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.ledger.Promisable;
import org.barreltally.ledger.Reservations;
import org.barreltally.ledger.Reservations.End;
import org.barreltally.ledger.Reservations.Line;

/** Promises jars of the pools to recipients, all or nothing, and ends promises. */
@ApplicationScoped
class Promises {

  private final Promisable promisable;
  private final Reservations reservations;

  Promises(Promisable promisable, Reservations reservations) {
    this.promisable = promisable;
    this.reservations = reservations;
  }

  /**
   * Reserves what is needed, substitutes where they are allowed and the first choice is short.
   *
   * @throws CannotPromise naming what is short; nothing is reserved then
   */
  List<Promise> reserve(List<Need> needs) {
    if (needs.isEmpty()) {
      return List.of();
    }
    Map<Jar, Long> available = available(needs, true);
    Allotment allotment = Allotment.of(needs, available);
    if (!allotment.unmet().isEmpty()) {
      throw new CannotPromise(allotment.unmet(), available);
    }
    UUID reservation =
        reservations.reserve(
            lines(
                allotment.met().stream()
                    .collect(
                        Collectors.groupingBy(
                            Allotted::jar,
                            LinkedHashMap::new,
                            Collectors.summingLong(Allotted::pieces)))));
    return allotment.met().stream()
        .map(a -> new Promise(a.n(), reservation, a.jar(), a.wanted(), a.pieces()))
        .toList();
  }

  /**
   * Reserves these very jars, no others in their stead.
   *
   * @throws CannotPromise naming what is short
   */
  List<Promise> reserveAgain(List<Promise> same) {
    if (same.isEmpty()) {
      return List.of();
    }
    List<Promise> fresh =
        reserve(same.stream().map(p -> new Need(p.n(), List.of(p.jar()), p.pieces())).toList());
    UUID reservation = fresh.get(0).reservation();
    return same.stream()
        .map(p -> new Promise(p.n(), reservation, p.jar(), p.wanted(), p.pieces()))
        .toList();
  }

  /** Ends promises. */
  void end(List<Promise> promises, End how) {
    promises.stream()
        .collect(
            Collectors.groupingBy(Promise::reservation, LinkedHashMap::new, Collectors.toList()))
        .forEach(
            (reservation, its) ->
                reservations.end(
                    reservation,
                    lines(
                        its.stream()
                            .collect(
                                Collectors.groupingBy(
                                    Promise::jar,
                                    LinkedHashMap::new,
                                    Collectors.summingLong(Promise::pieces)))),
                    how));
  }

  /**
   * Pieces that can be promised of every jar that would do; locked for the caller if he says so.
   */
  Map<Jar, Long> available(List<Need> needs, boolean locked) {
    Map<Promisable.Key, Jar> jars = new HashMap<>();
    needs.stream()
        .flatMap(need -> need.choices().stream())
        .forEach(jar -> jars.put(new Promisable.Key(jar.container(), jar.grade().code()), jar));
    Map<Promisable.Key, Long> found =
        locked ? promisable.locked(jars.keySet()) : promisable.seen(jars.keySet());
    Map<Jar, Long> available = new HashMap<>();
    found.forEach((key, pieces) -> available.put(jars.get(key), pieces));
    return available;
  }

  private static List<Line> lines(Map<Jar, Long> pieces) {
    return pieces.entrySet().stream()
        .map(e -> new Line(e.getKey().container(), e.getKey().grade().code(), e.getValue()))
        .toList();
  }
}
