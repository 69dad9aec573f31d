package org.barreltally.sales.bylot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Worked by hand in the comments, and against trying every way. */
class LotReckoningTest {

  @Test
  void what_was_counted_back_by_lot_says_what_was_sold_by_lot_though_no_sale_did() {
    // Out 24 of P1 and 12 of P2; back 10 and 9; of P1 one broke: sold 24 - 10 - 1 = 13 and 12 - 9 =
    // 3.
    SoldByLot found =
        LotReckoning.of(List.of(counted("fair", Map.of("P1", 13L, "P2", 3L))), List.of());
    assertEquals(Bounds.exactly(13), found.sold("fair", "P1"));
    assertEquals(Bounds.exactly(3), found.sold("fair", "P2"));
    assertTrue(found.sharp());
  }

  @Test
  void jars_carried_over_without_lot_leave_an_interval_at_both_tables() {
    // The fair had 10 of P1 and 4 of P2 left after its count, the market 2 of P1; 5 went from the
    // fair to the market without lot. The fair sold 10 + 4 - 5 = 9: of P2 0 to 4, so of P1 5 to 9.
    // The market sold 7: of P1 2 + (1 to 5), of P2 0 to 4.
    SoldByLot found =
        LotReckoning.of(
            List.of(
                counted("fair", Map.of("P1", 10L, "P2", 4L)), counted("market", Map.of("P1", 2L))),
            List.of(new Unlotted("fair", "market", 5, null)));
    assertEquals(new Bounds(5, 9), found.sold("fair", "P1"));
    assertEquals(new Bounds(0, 4), found.sold("fair", "P2"));
    assertEquals(new Bounds(3, 7), found.sold("market", "P1"));
    assertEquals(new Bounds(0, 4), found.sold("market", "P2"));
  }

  @Test
  void a_count_at_the_other_table_that_finds_a_lot_that_never_went_there_tells_what_was_carried() {
    // As above, but the market brought home 3 of P2, which only the fair had: at least 3 of the 5
    // were P2, at most 4; so P1 1 to 2.
    SoldByLot found =
        LotReckoning.of(
            List.of(
                counted("fair", Map.of("P1", 10L, "P2", 4L)),
                counted("market", Map.of("P1", 2L, "P2", -3L))),
            List.of(new Unlotted("fair", "market", 5, null)));
    assertEquals(new Bounds(8, 9), found.sold("fair", "P1"));
    assertEquals(new Bounds(0, 1), found.sold("fair", "P2"));
    assertEquals(new Bounds(3, 4), found.sold("market", "P1"));
    assertEquals(new Bounds(0, 1), found.sold("market", "P2"));
    assertEquals(List.of(), found.contradictions());
  }

  @Test
  void before_the_count_a_sale_without_lot_can_be_of_any_lot_that_stands_there() {
    // 8 of P1, 2 of P2 stand there, 3 were sold without lot: P1 1 to 3, P2 0 to 2.
    SoldByLot found =
        LotReckoning.of(
            List.of(new TableJars("fair", false, Map.of("P1", 8L, "P2", 2L), Map.of("P1", 4L))),
            List.of(new Unlotted("fair", Unlotted.SOLD, 3, null)));
    assertEquals(new Bounds(5, 7), found.sold("fair", "P1"));
    assertEquals(new Bounds(0, 2), found.sold("fair", "P2"));
    assertEquals(new Bounds(5, 7), found.standing("fair", "P1"));
    assertEquals(new Bounds(0, 2), found.standing("fair", "P2"));
  }

  @Test
  void a_sale_of_a_lot_that_was_never_packed_out_is_believed_and_doubted() {
    // 10 of P1 out, 6 back: 4 sold; 2 of them were told to be P9, which was never there. So P9 sold
    // 0 to 2, P1 2 to 4.
    SoldByLot found =
        LotReckoning.of(
            List.of(new TableJars("fair", true, Map.of("P1", 4L, "P9", -2L), Map.of("P9", 2L))),
            List.of());
    assertEquals(new Bounds(2, 4), found.sold("fair", "P1"));
    assertEquals(new Bounds(0, 2), found.sold("fair", "P9"));
    assertEquals(List.of(new Contradiction("fair", "P9", 2)), found.contradictions());
    assertFalse(found.sharp());
  }

  @Test
  void more_of_a_lot_home_than_went_out_takes_from_the_others() {
    // 10 of P1 and 6 of P2 out, 12 and 3 back: 1 sold, which can only be of P2.
    SoldByLot found =
        LotReckoning.of(List.of(counted("fair", Map.of("P1", -2L, "P2", 3L))), List.of());
    assertEquals(Bounds.exactly(0), found.sold("fair", "P1"));
    assertEquals(Bounds.exactly(1), found.sold("fair", "P2"));
    assertEquals(List.of(new Contradiction("fair", "P1", 2)), found.contradictions());
  }

  @Test
  void nothing_that_can_be_is_still_bounded() {
    // Two of three lots below zero by more than the third has.
    SoldByLot found =
        LotReckoning.of(List.of(counted("fair", Map.of("P1", -2L, "P2", 1L))), List.of());
    assertEquals(new Bounds(0, 1), found.sold("fair", "P2"));
    assertEquals(1, found.contradictions().size());
  }

  @Test
  void random_tellings_have_the_bounds_that_trying_every_way_finds() {
    long seed = Long.getLong("barreltally.seed", new Random().nextLong());
    System.out.println("Seed of sold by lot: -Dbarreltally.seed=" + seed);
    Random random = new Random(seed);
    int fitting = 0;
    int open = 0;
    for (int n = 0; n < 3000; n++) {
      List<TableJars> tables = tables(random);
      List<Unlotted> carried = carried(random, tables);
      EveryWay every = new EveryWay(tables, carried);
      SoldByLot found = LotReckoning.of(tables, carried);
      if (every.ways == 0) {
        assertFalse(found.sharp(), () -> tables + " " + carried);
        continue;
      }
      fitting++;
      open += every.ways > 1 ? 1 : 0;
      assertEquals(every.sold, flat(found.sold()), () -> tables + " " + carried);
      assertEquals(every.standing, flat(found.standing()), () -> tables + " " + carried);
      SoldByLot outer = OuterBounds.of(new Telling(tables, carried)).orElseThrow();
      Map<String, Bounds> around = flat(outer.sold());
      every.sold.forEach(
          (key, bounds) ->
              assertTrue(
                  around.get(key).least() <= bounds.least()
                      && around.get(key).most() >= bounds.most(),
                  () -> key + " of " + tables + " " + carried));
    }
    System.out.println(fitting + " of 3000 tellings fit, " + open + " of them in several ways");
    assertTrue(fitting > 800 && open > 300, fitting + " " + open);
  }

  @Test
  void what_is_too_much_to_try_is_bounded_from_outside_and_says_so() {
    // 300 each way between three tables: 301^3 sums are more than are tried.
    List<TableJars> tables =
        List.of(
            counted("a", Map.of("P1", 500L, "P2", 500L)),
            counted("b", Map.of("P1", 500L)),
            counted("c", Map.of("P2", 500L)));
    SoldByLot found =
        LotReckoning.of(
            tables,
            List.of(
                new Unlotted("a", "b", 300, null),
                new Unlotted("b", "c", 300, null),
                new Unlotted("c", "a", 300, null)));
    assertFalse(found.sharp());
    // At most the 300 that came were P1 and the 300 that went were P2, at least the other way
    // round.
    assertEquals(new Bounds(200, 800), found.sold("a", "P1"));
  }

  private static TableJars counted(String place, Map<String, Long> left) {
    return new TableJars(place, true, left, Map.of());
  }

  private static List<TableJars> tables(Random random) {
    List<TableJars> tables = new ArrayList<>();
    int lots = 1 + random.nextInt(3);
    for (int t = 0; t <= random.nextInt(3); t++) {
      Map<String, Long> left = new TreeMap<>();
      Map<String, Long> sold = new TreeMap<>();
      for (int l = 0; l < lots; l++) {
        if (random.nextInt(4) > 0) {
          left.put("P" + l, (long) random.nextInt(6) - (random.nextInt(5) == 0 ? 3 : 0));
          sold.put("P" + l, (long) random.nextInt(3));
        }
      }
      tables.add(new TableJars("t" + t, random.nextBoolean(), left, sold));
    }
    return tables;
  }

  private static List<Unlotted> carried(Random random, List<TableJars> tables) {
    List<Unlotted> carried = new ArrayList<>();
    int carryings = 1 + random.nextInt(3);
    for (int c = 0; c < carryings; c++) {
      String from = "t" + random.nextInt(tables.size());
      int to = random.nextInt(tables.size() + 2);
      String where = to < tables.size() ? "t" + to : to == tables.size() ? Unlotted.SOLD : "broken";
      if (!from.equals(where)) {
        Set<String> lots = random.nextInt(3) == 0 ? Set.of("P0", "P2") : null;
        carried.add(new Unlotted(from, where, random.nextInt(5), lots));
      }
    }
    return carried;
  }

  private static Map<String, Bounds> flat(Map<String, Map<String, Bounds>> byPlace) {
    Map<String, Bounds> flat = new TreeMap<>();
    byPlace.forEach((place, lots) -> lots.forEach((lot, b) -> flat.put(place + lot, b)));
    return flat;
  }
}
