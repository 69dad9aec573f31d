package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class JurisdictionTest {
  private static final Jurisdiction FEDERAL = Jurisdiction.of("us-federal");

  /** Source: United States Standards for Grades of Maple Syrup, USDA AMS 2015. */
  @Test
  void federal_classes_begin_and_end_where_the_standard_says() {
    for (CSVRecord row : TestTable.rows("us_maple_grades.csv")) {
      String name = row.get("color_class");
      double min = TestTable.number(row, "transmittance_min");
      ColorClass graded = FEDERAL.grade(min, Taste.CLEAN);
      assertEquals(name.replace(' ', '-'), graded.code());
      assertEquals(
          name + ", " + row.get("taste") + " taste", graded.words().toLowerCase(Locale.ROOT));
      if (!row.get("transmittance_below").isEmpty()) {
        double below = TestTable.number(row, "transmittance_below");
        assertEquals(graded, FEDERAL.grade(Math.nextDown(below), Taste.CLEAN));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "100, golden",
    "75, golden",
    "74.95, amber",
    "62, amber",
    "50, amber",
    "49.99, dark",
    "25, dark",
    "24.9, very-dark",
    "0, very-dark"
  })
  void values_between_the_steps_are_rounded_down(double transmittance, String grade) {
    for (Jurisdiction jurisdiction : Jurisdiction.all()) {
      assertEquals(grade, jurisdiction.grade(transmittance, Taste.CLEAN).code());
    }
  }

  @ParameterizedTest
  @EnumSource(value = Taste.class, names = "CLEAN", mode = EnumSource.Mode.EXCLUDE)
  void an_off_taste_makes_processing_grade(Taste taste) {
    assertTrue(taste.isOff());
    assertEquals(ColorClass.PROCESSING, FEDERAL.grade(80, taste));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 100.1, Double.NaN})
  void an_impossible_transmittance_is_refused(double transmittance) {
    InvalidField refusal =
        assertThrows(InvalidField.class, () -> FEDERAL.grade(transmittance, Taste.CLEAN));
    assertEquals("transmittance", refusal.errors().get(0).field());
    assertThrows(InvalidField.class, () -> FEDERAL.nearALine(transmittance, 4));
  }

  @Test
  void a_missing_taste_is_refused() {
    InvalidField refusal = assertThrows(InvalidField.class, () -> FEDERAL.grade(60, null));
    assertEquals("taste", refusal.errors().get(0).field());
  }

  /** Source of the 4 points: Perkins et al., University of Vermont, 2020. */
  @ParameterizedTest
  @CsvSource({
    "71, true",
    "79, true",
    "75, true",
    "70.9, false",
    "62, false",
    "53, true",
    "46, true",
    "29, true",
    "21, true",
    "37, false",
    "2, false",
    "98, false"
  })
  void flags_what_another_meter_might_grade_otherwise(double transmittance, boolean near) {
    assertEquals(near, FEDERAL.nearALine(transmittance, 4));
  }

  /** Sources: 21 CFR 168.140; Vermont regulations; Maine 7 MRS 892-A; 1 NYCRR 270.1. */
  @ParameterizedTest
  @CsvSource({
    "us-federal, 66.0, 68.9, 20",
    "vermont, 66.9, 68.9, 15.5556",
    "maine, 66.0, 69.0, 20",
    "new-york, 66.0, 68.9, 20"
  })
  void knows_the_density_limits(String code, double least, double most, double reference) {
    Jurisdiction jurisdiction = Jurisdiction.of(code);
    assertTrue(jurisdiction.densityWithin(least) && jurisdiction.densityWithin(most));
    assertFalse(jurisdiction.densityWithin(least - 0.01));
    assertFalse(jurisdiction.densityWithin(most + 0.01));
    assertFalse(jurisdiction.densityWithin(Double.NaN));
    assertEquals(reference, jurisdiction.referenceCelsius(), 0.0001);
    assertFalse(jurisdiction.source().isBlank() || jurisdiction.name().isBlank());
  }

  /** Vermont's 66.9 read on its own 60 °F instrument at 60 °F is within, whatever the noise. */
  @Test
  void a_reading_at_the_limit_on_the_rules_own_instrument_is_within() {
    Jurisdiction vermont = Jurisdiction.of("vermont");
    double reference = vermont.referenceCelsius();
    assertTrue(vermont.densityWithin(Hydrometer.trueBrix(66.9, reference, reference)));
    double warm = Hydrometer.reading(66.9, 20, reference);
    assertTrue(vermont.densityWithin(Hydrometer.trueBrix(warm, 20, reference)));
  }

  @Test
  void knows_four_and_refuses_others_with_the_list() {
    assertEquals(
        List.of("us-federal", "vermont", "maine", "new-york"),
        Jurisdiction.all().stream().map(Jurisdiction::code).toList());
    assertEquals("us-federal", Jurisdiction.DEFAULT);
    UnknownJurisdiction refusal =
        assertThrows(UnknownJurisdiction.class, () -> Jurisdiction.of("atlantis"));
    assertTrue(refusal.detail().contains("vermont"));
    assertThrows(UnknownJurisdiction.class, () -> Jurisdiction.of(null));
  }

  @ParameterizedTest
  @CsvSource({"golden", "amber", "dark", "very-dark", "processing"})
  void color_classes_are_known_by_their_codes(String code) {
    assertEquals(code, ColorClass.of(code).code());
  }

  @ParameterizedTest
  @CsvSource({"clean", "buddy", "sour", "metabolism", "scorched", "other-off"})
  void tastes_are_known_by_their_codes(String code) {
    assertEquals(code, Taste.of(code).code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Golden", "very dark", "VERY_DARK", "fine"})
  void other_codes_are_refused_with_the_list(String code) {
    InvalidField grade = assertThrows(InvalidField.class, () -> ColorClass.of(code));
    assertEquals("grade", grade.errors().get(0).field());
    InvalidField taste = assertThrows(InvalidField.class, () -> Taste.of(code));
    assertTrue(taste.detail().contains("clean, buddy, sour, metabolism, scorched, other-off"));
    assertThrows(InvalidField.class, () -> Taste.of(null));
  }
}
