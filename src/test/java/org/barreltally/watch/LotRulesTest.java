package org.barreltally.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Jurisdiction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * When a lot is worth a look, on 1 October 2026: 90 days after 3 July, 30 days after 1 September.
 * US federal lines at 75, 50 and 25 %Tc (USDA AMS, 2015), a meter good to 4 points.
 */
class LotRulesTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 10, 1);
  private static final LotRules RULES =
      new LotRules(Jurisdiction.of(Jurisdiction.DEFAULT), 4, 90, 30);

  @ParameterizedTest(name = "made {0}, last read {1}: {2}")
  @CsvSource({
    "2026-07-03, , ",
    "2026-07-02, , jars-by-age",
    "2026-06-20, 2026-06-20, jars-by-age",
    "2026-06-20, 2026-09-10, ",
    "2026-06-20, 2026-07-02, jars-by-age",
    "2026-10-01, , "
  })
  void jars_are_looked_at_after_ninety_days_without_a_colour_reading(
      LocalDate made, LocalDate read, String expected) {
    assertEquals(expected == null ? "" : expected, kinds(lot(null, made, read, 60.0, null)));
  }

  @Test
  void a_barrel_is_told_by_its_tag() {
    WatchItem item =
        RULES.of(lot("B-01", LocalDate.of(2026, 3, 14), null, 60.0, null), TODAY).get(0);
    assertEquals(WatchItem.Kind.BARREL_BY_AGE, item.kind());
    assertEquals("B-01", item.about());
    assertEquals(201, item.days());
    assertEquals(
        "Lot L1 in B-01 was filled 201 days ago, on 2026-03-14. Read its colour again and taste it.",
        item.reason());
  }

  @ParameterizedTest(name = "{0} %Tc near a line: {1}")
  @CsvSource({
    "81, false",
    "79, true",
    "75, true",
    "71, true",
    "70.9, false",
    "54.1, false",
    "54, true",
    "46, true",
    "45.9, false",
    "29, true",
    "21, true",
    "20.9, false",
    "3, false"
  })
  void a_reading_within_what_the_meter_may_be_off_of_a_line_is_looked_at(
      double transmittance, boolean near) {
    assertEquals(
        near ? "near-grade-line" : "", kinds(lot(null, TODAY, TODAY, transmittance, null)));
  }

  @Test
  void processing_grade_has_no_line_to_be_near() {
    StandingLot lot =
        new StandingLot(
            "L1", "B-01", 0, null, false, TODAY, TODAY, ColorClass.PROCESSING, 50.0, null);
    assertTrue(RULES.of(lot, TODAY).isEmpty());
  }

  @ParameterizedTest(name = "held since {0}: {1}")
  @CsvSource({"2026-09-01, ", "2026-08-31, held-long", "2026-10-01, "})
  void a_hold_is_looked_at_after_thirty_days(LocalDate since, String expected) {
    assertEquals(expected == null ? "" : expected, kinds(lot(null, TODAY, TODAY, 60.0, since)));
  }

  @Test
  void plastic_is_pointed_out_beside_the_age_and_glass_is_not() {
    LocalDate june = LocalDate.of(2026, 6, 20);
    WatchItem jugs =
        RULES
            .of(
                new StandingLot(
                    "L1", null, 12, "HP, PT", false, june, june, ColorClass.AMBER, 60.0, null),
                TODAY)
            .get(0);
    assertTrue(jugs.note().startsWith("It stands in plastic (HP, PT)."), jugs.note());
    assertNull(RULES.of(lot(null, june, june, 60.0, null), TODAY).get(0).note());
  }

  private static String kinds(StandingLot lot) {
    List<WatchItem> items = RULES.of(lot, TODAY);
    return items.stream().map(item -> item.kind().code()).collect(Collectors.joining(" "));
  }

  private static StandingLot lot(
      String tag, LocalDate made, LocalDate read, Double transmittance, LocalDate heldSince) {
    return new StandingLot(
        "L1",
        tag,
        tag == null ? 12 : 0,
        null,
        false,
        made,
        read,
        ColorClass.AMBER,
        transmittance,
        heldSince);
  }
}
