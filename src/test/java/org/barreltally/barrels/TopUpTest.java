package org.barreltally.barrels;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.barrels.Asked.fill;
import static org.barreltally.barrels.Asked.filled;
import static org.barreltally.barrels.Asked.halfBarrel;
import static org.barreltally.barrels.Asked.topUp;
import static org.barreltally.barrels.Asked.topUpTo;
import static org.barreltally.barrels.Asked.with;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.Map;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A half barrel of 226.5 lb at 67.4 °Bx, filled up a week later to 444.5 lb. */
@QuarkusTest
class TopUpTest {

  @Inject BookRows rows;

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  @Test
  void the_whole_becomes_a_blend_lot_of_the_old_and_the_added() {
    String tag = filled();
    String old = reads("/api/barrels/" + tag).extract().path("lot");
    String blend =
        topUp(tag, topUpTo(66.9))
            .statusCode(201)
            .body("tag", equalTo(tag))
            .body("state", equalTo("full"))
            .body("grade", equalTo("amber"))
            .body("brix.toDouble()", closeTo(66.9, 1e-9))
            .body("netWeight.value.toDouble()", closeTo(444.5, 0.01))
            .body("seasons", contains(2024))
            .extract()
            .path("lot");
    assertNotEquals(old, blend);
    JsonPath trace = reads("/api/lots/" + blend + "/trace").extract().jsonPath();
    assertEquals(2, trace.getList("parents").size());
    // by weight 226.5 / 444.5 = 0.50956, and 218.0 lb added
    assertEquals(0.50956, trace.getDouble("parents.find { it.lot == '" + old + "' }.share"), 5e-5);
    assertEquals(
        226.5, trace.getDouble("parents.find { it.lot == '" + old + "' }.weight.value"), 0.01);
    String added = trace.getString("parents.find { it.lot != '" + old + "' }.lot");
    assertEquals(
        218.0, trace.getDouble("parents.find { it.lot != '" + old + "' }.weight.value"), 0.05);
    // the sugar tells its strength: (444.5 × 66.9 - 226.5 × 67.4) / 218.0 = 66.38 °Bx
    reads("/api/lots/" + added)
        .body("brix.toDouble()", closeTo(66.38, 0.01))
        .body("kind", equalTo("bulk"))
        .body("grade", nullValue());
    reads("/api/lots/" + old + "/trace").body("children.lot", contains(blend));
    assertEquals(
        "{weighing=2, density=2, reheat=1}",
        readings(tag).toString(),
        "what was read stands beside the filling");
  }

  @Test
  void last_years_syrup_makes_a_blend_of_both_years() {
    String tag = newTag("B");
    fill(with(halfBarrel(tag), "season", "2023"));
    topUp(tag, topUpTo(66.9)).statusCode(201).body("seasons", contains(2023, 2024));
    String other = filled();
    topUp(other, with(topUpTo(66.9), "season", "2023"))
        .statusCode(201)
        .body("seasons", contains(2023, 2024));
  }

  @Test
  void without_the_reheat_record_it_is_refused_with_the_caution() {
    String tag = filled();
    Map<String, String> before = rows.fingerprint();
    topUp(tag, with(topUpTo(66.9), "reheat", null))
        .statusCode(422)
        .body("code", equalTo("reheat-record-missing"))
        .body("errors[0].field", equalTo("reheat"))
        .body("detail", allOf(containsString("spoilage"), containsString("150 to 180 °F")));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void without_colour_and_taste_the_blend_is_held() {
    String tag = filled();
    topUp(tag, with(topUpTo(66.9), "taste", null))
        .statusCode(201)
        .body("held", equalTo(true))
        .body("grade", nullValue());
  }

  @Test
  void a_hold_goes_with_the_syrup() {
    String tag = filled();
    posts("/api/barrels/" + tag + "/hold", "{'reason': 'Smells sour'}").statusCode(200);
    topUp(tag, topUpTo(66.9))
        .statusCode(201)
        .body("held", equalTo(true))
        .body("grade", equalTo("amber"));
  }

  @Test
  void a_little_added_may_read_stronger_than_syrup_is_and_can_still_be_shown() {
    String tag = filled();
    String little = with(topUpTo(67.6), "weighing.gross.value", "273.5");
    String blend = topUp(tag, little).statusCode(201).extract().path("lot");
    reads("/api/lots/" + blend + "/trace")
        .body("parents.weight.value*.toDouble()*.round()", containsInAnyOrder(227, 6));
  }

  /** Columns: path, the JSON put there (none takes it away), status, code, field named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          weighing.gross.value      | 268          | 422 | nothing-added           | weighing.gross
          weighing.gross.value      | 200          | 422 | nothing-added           | weighing.gross
          weighing.gross.value      | 30           | 422 | gross-under-tare        | weighing.gross
          weighing.gross.unit       | 'gal'        | 400 | invalid-field           | weighing.gross.unit
          weighing                  |              | 400 | invalid-field           | weighing.gross
          weighing.gross.value      | 700          | 422 | over-capacity           | weighing.gross
          density.reading.value     | 56           | 422 | added-syrup-implausible | density.reading
          density.reading.value     | 36.2         | 422 | looks-like-baume        | density.reading
          density                   |              | 400 | invalid-field           | density
          reheat.temperature        |              | 422 | reheat-record-missing   | reheat
          reheat.temperature.unit   | 'gal'        | 400 | invalid-field           | reheat.temperature.unit
          reheat.temperature.value  | 1000         | 400 | invalid-field           | reheat.temperature
          reheat.temperature.value  | -40          | 400 | invalid-field           | reheat.temperature
          reheat.by                 |              | 400 | invalid-field           | reheat.by
          reheat.by                 | ' '          | 400 | invalid-field           | reheat.by
          reheat.when               | 'today'      | 400 | unknown-field           | reheat.when
          season                    | 2999         | 400 | invalid-field           | season
          season                    | '2024'       | 400 | wrong-type              | season
          on                        | '2999-01-01' | 400 | in-the-future           | on
          on                        | '2024-01-01' | 400 | invalid-field           | on
          on                        |              | 400 | invalid-field           | on
          transmittance             | 200          | 400 | invalid-field           | transmittance
          taste                     | 'odd'        | 400 | invalid-field           | taste
          """)
  void a_field_that_cannot_be_right_is_named(
      String path, String value, int status, String code, String field) {
    String tag = newTag("B");
    fill(with(halfBarrel(tag), "capacity", "{'value': 41, 'unit': 'gal'}"));
    Map<String, String> before = rows.fingerprint();
    topUp(tag, with(topUpTo(66.9), path, value))
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void what_was_poured_together_is_not_taken_back() {
    String tag = filled();
    String blend = topUp(tag, topUpTo(66.9)).statusCode(201).extract().path("lot");
    String pouring =
        rows.column(
                "SELECT m.id FROM movements m JOIN entries e ON e.movement = m.id JOIN items i ON i.id = e.item"
                    + " WHERE m.kind = 'top-up' AND i.lot = '"
                    + blend
                    + "'")
            .get(0);
    posts("/api/movements/" + pouring + "/reversal", "{'reason': 'Wrong barrel'}")
        .statusCode(409)
        .body("code", equalTo("cannot-be-taken-back"));
    reads("/api/barrels/" + tag).body("lot", equalTo(blend));
  }

  private Map<String, Long> readings(String tag) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (String kind : new String[] {"weighing", "density", "reheat"}) {
      counts.put(
          kind,
          rows.number(
              "SELECT count(*) FROM barrel_readings r JOIN fillings f ON f.id = r.filling WHERE f.tag = '"
                  + tag
                  + "' AND r.kind = '"
                  + kind
                  + "'"));
    }
    return counts;
  }
}
