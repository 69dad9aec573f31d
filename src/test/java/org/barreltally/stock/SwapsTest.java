package org.barreltally.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.stock.StockCount.Line;
import org.junit.jupiter.api.Test;

class SwapsTest {

  @Test
  void one_over_by_what_the_other_is_short_by_is_a_swap() {
    assertEquals("A-B B-A C-null", suspects(line("A", 10, 13), line("B", 8, 5), line("C", 1, 1)));
  }

  @Test
  void other_amounts_are_no_swap() {
    assertEquals("A-null B-null", suspects(line("A", 10, 13), line("B", 8, 6)));
  }

  @Test
  void nobody_is_suspected_when_several_fit() {
    assertEquals(
        "A-null B-null C-null", suspects(line("A", 10, 13), line("B", 8, 5), line("C", 20, 17)));
  }

  @Test
  void two_pairs_of_different_amounts_are_two_swaps() {
    assertEquals(
        "A-B B-A C-D D-C",
        suspects(line("A", 10, 13), line("B", 8, 5), line("C", 9, 10), line("D", 4, 3)));
  }

  @Test
  void another_size_is_no_swap() {
    List<Line> lines =
        Swaps.suspect(
            List.of(
                new Line("PT", "A", 10, 13, null, null, false),
                new Line("HP", "B", 8, 5, null, null, false)));
    assertNull(lines.get(0).suspectedSwap());
    assertNull(lines.get(1).suspectedSwap());
  }

  private static Line line(String lot, long book, long counted) {
    return new Line("PT", lot, book, counted, null, null, false);
  }

  private static String suspects(Line... lines) {
    return Swaps.suspect(Arrays.asList(lines)).stream()
        .map(line -> line.lot() + "-" + line.suspectedSwap())
        .collect(Collectors.joining(" "));
  }
}
