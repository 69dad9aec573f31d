package org.barreltally.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is typed in a form, as the JSON of the interface. */
class FormJsonTest {

  record Row(String lot, Long count) {}

  record Inner(Quantity gross, Boolean sealed) {}

  record Whole(
      String tag,
      Integer season,
      Quantity weight,
      Money paid,
      Instant at,
      Inner inner,
      List<Row> rows) {}

  private static final PageFarm FARM =
      new PageFarm() {
        @Override
        public LocalDate today() {
          return LocalDate.of(2026, 3, 14);
        }

        @Override
        public ZoneId zone(Instant at) {
          return ZoneId.of("America/New_York");
        }

        @Override
        public String currency() {
          return "USD";
        }
      };

  private static String json(String... fieldsAndTexts) {
    MultivaluedMap<String, String> said = new MultivaluedHashMap<>();
    for (int n = 0; n < fieldsAndTexts.length; n += 2) {
      said.add(fieldsAndTexts[n], fieldsAndTexts[n + 1]);
    }
    return new FormJson(Typed.of(said), FARM).of(Whole.class).toString();
  }

  @Test
  void what_is_left_blank_is_not_sent() {
    assertEquals("{}", json("tag", " ", "season", "", "weight", "", "weight.unit", "lb"));
  }

  @Test
  void text_numbers_nested_records_and_times_go_where_they_belong() {
    assertEquals(
        "{\"tag\":\"12\",\"season\":2026,\"at\":\"2026-03-14T20:30:00Z\",\"inner\":{\"sealed\":true}}",
        json("tag", "12", "season", "2026", "at", "2026-03-14T16:30", "inner.sealed", "true"));
  }

  @ParameterizedTest
  @CsvSource({
    "486.5, lb, 486.5, lb",
    "'486,5', kg, 486.5, kg",
    "'1 486,5', kg, 1486.5, kg",
    "486.5 lbs, kg, 486.5, lb",
    "185 °F, degC, 185, degF",
    "16 fl oz, mL, 16, floz",
    "-3, degC, -3, degC",
    ".5, gal, 0.5, gal"
  })
  void a_quantity_may_be_typed_with_a_comma_and_with_its_unit(
      String typed, String chosen, String value, String unit) {
    assertEquals(
        "{\"weight\":{\"value\":%s,\"unit\":\"%s\"}}".formatted(value, unit),
        json("weight", typed, "weight.unit", chosen));
  }

  @ParameterizedTest
  @CsvSource({"28, 28", "$28.00, 28.00", "'28,50 $', 28.50"})
  void money_is_in_the_farms_currency(String typed, String amount) {
    assertEquals(
        "{\"paid\":{\"amount\":%s,\"currency\":\"USD\"}}".formatted(amount), json("paid", typed));
  }

  @Test
  void blank_rows_are_dropped_and_the_rest_move_up() {
    assertEquals(
        "{\"rows\":[{\"lot\":\"A\"},{\"lot\":\"B\",\"count\":3}]}",
        json("rows[0].lot", "A", "rows[1].lot", "", "rows[3].lot", "B", "rows[3].count", "3"));
  }

  @Test
  void all_that_is_no_number_is_named_at_once() {
    InvalidField refused =
        assertThrows(
            InvalidField.class,
            () ->
                json("season", "spring", "weight", "heavy", "weight.unit", "lb", "paid", "1.2.3"));
    assertEquals(
        List.of("season", "weight", "paid"),
        refused.errors().stream().map(error -> error.field()).toList());
  }

  @Test
  void a_form_beyond_all_measure_is_refused() {
    MultivaluedMap<String, String> said = new MultivaluedHashMap<>();
    said.add("tag", "x".repeat(10_001));
    assertThrows(RuntimeException.class, () -> Typed.of(said));
  }

  @Test
  void the_rows_shown_are_those_typed_in_and_at_least_so_many() {
    Form form = Form.typed("id", Map.of("rows[4].lot", "A"));
    assertEquals(5, form.rows("rows", 3).size());
    assertEquals(3, Form.blank().rows("rows", 3).size());
    assertTrue(form.value(form.row("rows", 4, "lot")).equals("A"));
  }
}
