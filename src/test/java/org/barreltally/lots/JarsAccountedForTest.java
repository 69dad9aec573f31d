package org.barreltally.lots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Jars made against jars accounted for; per size they sum to zero over all places, as entries do.
 */
class JarsAccountedForTest {

  @Test
  void jars_on_the_shelf_sold_and_broken_are_all_accounted_for() {
    Trace trace =
        trace(
            packed("PT", -160),
            home("PT", 100),
            outside("customer", "PT", 57),
            outside("broken", "PT", 3));
    assertEquals(160, trace.jarsMade());
    assertEquals(160, trace.jarsAccounted());
  }

  @Test
  void jars_that_were_there_when_the_book_began_count_as_made() {
    Trace trace = trace(outside("opening", "PT", -12), packed("PT", -8), home("PT", 20));
    assertEquals(20, trace.jarsMade());
    assertEquals(20, trace.jarsAccounted());
  }

  @Test
  void jars_a_count_found_missing_are_not_accounted_for() {
    Trace trace = trace(packed("PT", -160), home("PT", 158), outside("unexplained", "PT", 2));
    assertEquals(160, trace.jarsMade());
    assertEquals(158, trace.jarsAccounted());
  }

  @Test
  void jars_a_count_found_over_are_more_than_were_made() {
    Trace trace = trace(packed("PT", -160), home("PT", 161), outside("unexplained", "PT", -1));
    assertEquals(160, trace.jarsMade());
    assertEquals(161, trace.jarsAccounted());
  }

  @Test
  void a_half_pint_over_does_not_make_up_for_a_pint_missing() {
    Trace trace =
        trace(
            packed("PT", -10),
            packed("HP", -10),
            home("PT", 9),
            home("HP", 11),
            outside("unexplained", "PT", 1),
            outside("unexplained", "HP", -1));
    assertEquals(20, trace.jarsMade());
    assertEquals(19, trace.jarsAccounted());
  }

  @Test
  void a_table_that_sold_more_than_it_had_makes_no_jars() {
    Trace trace =
        trace(
            packed("PT", -10),
            home("PT", 10),
            new Whereabouts.Jars("P1", "table", "out", "PT", -3),
            outside("customer", "PT", 3));
    assertEquals(10, trace.jarsMade());
    assertEquals(10, trace.jarsAccounted());
  }

  @Test
  void without_jars_nothing_is_made_and_nothing_missing() {
    assertEquals(0, trace().jarsMade());
    assertEquals(0, trace().jarsAccounted());
  }

  private static Whereabouts.Jars packed(String container, long pieces) {
    return new Whereabouts.Jars("P1", "packing", "conversion", container, pieces);
  }

  private static Whereabouts.Jars home(String container, long pieces) {
    return new Whereabouts.Jars("P1", "cool-room", "home", container, pieces);
  }

  private static Whereabouts.Jars outside(String place, String container, long pieces) {
    return new Whereabouts.Jars("P1", place, "outside", container, pieces);
  }

  private static Trace trace(Whereabouts.Jars... jars) {
    return new Trace(
        null,
        List.of(),
        List.of(),
        Map.of(),
        Map.of(),
        List.of(jars),
        List.of(),
        Map.of(),
        Map.of(),
        List.of());
  }
}
