package org.barreltally.gifts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.barreltally.measure.ColorClass;
import org.junit.jupiter.api.Test;

/** Who gets which jars, by hand and against every way there is. */
class AllotmentTest {

  private static final Jar GOLDEN = new Jar("HP", ColorClass.GOLDEN);
  private static final Jar AMBER = new Jar("HP", ColorClass.AMBER);
  private static final Jar DARK = new Jar("HP", ColorClass.DARK);
  private static final List<Jar> ALL = List.of(GOLDEN, AMBER, DARK);

  @Test
  void first_choices_go_to_the_lower_numbers() {
    Allotment made =
        Allotment.of(
            List.of(need(1, 1, GOLDEN, AMBER), need(2, 1, GOLDEN, AMBER)),
            Map.of(GOLDEN, 1L, AMBER, 5L));
    assertEquals(
        List.of(new Allotted(1, GOLDEN, GOLDEN, 1), new Allotted(2, GOLDEN, AMBER, 1)), made.met());
    assertEquals(List.of(), made.unmet());
  }

  @Test
  void nobody_gets_a_substitute_that_another_wants_as_first_choice() {
    Allotment made =
        Allotment.of(
            List.of(need(1, 1, GOLDEN, AMBER), need(2, 1, AMBER)), Map.of(GOLDEN, 0L, AMBER, 1L));
    assertEquals(List.of(new Allotted(2, AMBER, AMBER, 1)), made.met());
    assertEquals(List.of(need(1, 1, GOLDEN, AMBER)), made.unmet());
  }

  @Test
  void one_moves_to_his_substitute_where_that_lets_all_be_met() {
    // 1 wants golden and would take amber; 2 wants amber and would take dark. There is no golden.
    Allotment made =
        Allotment.of(
            List.of(need(1, 1, GOLDEN, AMBER), need(2, 1, AMBER, DARK)),
            Map.of(GOLDEN, 0L, AMBER, 1L, DARK, 1L));
    assertEquals(
        List.of(new Allotted(1, GOLDEN, AMBER, 1), new Allotted(2, AMBER, DARK, 1)), made.met());
  }

  @Test
  void a_pool_below_zero_gives_nothing() {
    assertEquals(
        List.of(need(1, 2, GOLDEN)),
        Allotment.of(List.of(need(1, 2, GOLDEN)), Map.of(GOLDEN, -3L)).unmet());
  }

  @Test
  void as_many_as_can_be_are_met_with_the_least_substituting_of_all_ways() {
    Random random = new Random(20261125);
    for (int round = 0; round < 3000; round++) {
      List<Need> needs = new ArrayList<>();
      int people = 1 + random.nextInt(4);
      for (int n = 1; n <= people; n++) {
        List<Jar> choices = new ArrayList<>(ALL);
        java.util.Collections.shuffle(choices, random);
        needs.add(new Need(n, choices.subList(0, 1 + random.nextInt(3)), 1 + random.nextInt(2)));
      }
      Map<Jar, Long> available = new HashMap<>();
      ALL.forEach(jar -> available.put(jar, (long) random.nextInt(4)));
      Allotment made = Allotment.of(needs, available);
      long met = made.met().stream().mapToLong(Allotted::pieces).sum();
      long cost =
          made.met().stream()
              .mapToLong(a -> a.pieces() * choices(needs, a.n()).indexOf(a.jar()))
              .sum();
      long[] best = best(pieces(needs), 0, new HashMap<>(available));
      assertEquals(best[0], met, () -> needs + " of " + available);
      assertEquals(best[1], cost, () -> needs + " of " + available);
      for (Jar jar : ALL) {
        long given =
            made.met().stream().filter(a -> a.jar().equals(jar)).mapToLong(Allotted::pieces).sum();
        assertTrue(given <= available.get(jar));
      }
    }
  }

  /** Tries every way to hand out pieces one by one: most met, and of those the least cost. */
  private static long[] best(List<List<Jar>> pieces, int at, Map<Jar, Long> left) {
    if (at == pieces.size()) {
      return new long[] {0, 0};
    }
    long[] best = best(pieces, at + 1, left);
    List<Jar> choices = pieces.get(at);
    for (int rank = 0; rank < choices.size(); rank++) {
      Jar jar = choices.get(rank);
      if (left.get(jar) > 0) {
        left.merge(jar, -1L, Long::sum);
        long[] rest = best(pieces, at + 1, left);
        left.merge(jar, 1L, Long::sum);
        long met = rest[0] + 1;
        long cost = rest[1] + rank;
        if (met > best[0] || met == best[0] && cost < best[1]) {
          best = new long[] {met, cost};
        }
      }
    }
    return best;
  }

  private static List<List<Jar>> pieces(List<Need> needs) {
    List<List<Jar>> pieces = new ArrayList<>();
    needs.forEach(
        need -> {
          for (int i = 0; i < need.pieces(); i++) {
            pieces.add(need.choices());
          }
        });
    return pieces;
  }

  private static List<Jar> choices(List<Need> needs, int n) {
    return needs.get(n - 1).choices();
  }

  private static Need need(int n, long pieces, Jar... choices) {
    return new Need(n, List.of(choices), pieces);
  }
}
