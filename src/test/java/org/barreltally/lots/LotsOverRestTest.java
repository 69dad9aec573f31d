package org.barreltally.lots;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A barrel of 208 lb canned into 100 pints and 80 half-pints. */
@QuarkusTest
class LotsOverRestTest {

  @Inject BookRows rows;

  private record Packed(String barrelLot, String lot) {}

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  @Test
  void a_packed_lot_traces_to_its_barrel_and_to_every_shelf() {
    Packed packed = packed(2024);
    reads("/api/lots/" + packed.lot())
        .body("kind", equalTo("packed"))
        .body("madeOn", equalTo("2024-06-20"))
        .body("seasons", contains(2024))
        .body("grade", equalTo("amber"))
        .body("held", equalTo(false));
    posts(
            "/api/stock/write-offs",
            "{'place': 'cool-room', 'container': 'PT', 'lot': '%s', 'count': 3, 'cause': 'broken'}"
                .formatted(packed.lot()))
        .statusCode(201);
    JsonPath trace = reads("/api/lots/" + packed.lot() + "/trace").extract().jsonPath();
    assertEquals(packed.barrelLot(), trace.getString("parents[0].lot"));
    assertEquals(208.0, trace.getDouble("parents[0].weight.value"), 0.01);
    assertEquals("lb", trace.getString("parents[0].weight.unit"));
    assertEquals(1, trace.getDouble("parents[0].share"), 0);
    assertEquals(2024, trace.getInt("parents[0].seasons[0]"));
    assertEquals(
        97,
        trace.getInt("whereabouts.find { it.place == 'cool-room' && it.container == 'PT' }.count"));
    assertEquals(
        80,
        trace.getInt("whereabouts.find { it.place == 'cool-room' && it.container == 'HP' }.count"));
    assertEquals(3, trace.getInt("whereabouts.find { it.place == 'broken' }.count"));
    assertEquals(3, trace.getList("whereabouts").size());
    assertEquals("[exact, exact, exact]", trace.getList("whereabouts.certainty").toString());
    assertEquals(180, trace.getInt("total"));
    assertEquals(180, trace.getInt("accounted"));
    reads("/api/lots/" + packed.barrelLot() + "/trace")
        .body("children.lot", contains(packed.lot()))
        .body("children[0].share.toDouble()", closeTo(1, 0))
        .body("descendants.lot", contains(packed.lot()))
        .body("parents", empty())
        .body("syrup.findAll { it.lot == '" + packed.barrelLot() + "' }", empty())
        .body("total", equalTo(180));
  }

  @Test
  void jars_a_count_missed_or_found_over_show_in_the_trace() {
    Packed packed = packed(2024);
    counts(packed.lot(), "PT", 98);
    trace(packed.barrelLot()).body("total", equalTo(180)).body("accounted", equalTo(178));
    // one half-pint over does not make up for the two pints
    counts(packed.lot(), "HP", 81);
    trace(packed.lot()).body("total", equalTo(180)).body("accounted", equalTo(178));
    counts(packed.lot(), "PT", 100);
    trace(packed.lot()).body("total", equalTo(180)).body("accounted", equalTo(181));
    counts(packed.lot(), "HP", 80);
    trace(packed.lot()).body("total", equalTo(180)).body("accounted", equalTo(180));
  }

  @Test
  void jars_of_a_held_lot_cannot_be_promised_until_it_is_released() {
    Packed packed = packed(2024);
    JsonPath before = pints("amber");
    posts("/api/lots/" + packed.lot() + "/hold", "{'reason': 'Mould in a returned pint'}")
        .statusCode(200)
        .body("held", equalTo(true));
    assertEquals(before.getLong("[0].available") - 100, pints("amber").getLong("[0].available"));
    posts("/api/lots/" + packed.lot() + "/hold", "{'reason': 'And in a second'}").statusCode(200);
    reads("/api/lots?held=true&limit=500").body("items.lot", hasItem(packed.lot()));
    posts("/api/lots/" + packed.lot() + "/release", "{'reason': 'Caps were loose'}")
        .statusCode(200)
        .body("held", equalTo(false));
    assertEquals(before.getLong("[0].available"), pints("amber").getLong("[0].available"));
    reads("/api/lots?held=true&limit=500").body("items.lot", not(hasItem(packed.lot())));
    assertEquals(
        List.of("held", "held", "released"),
        rows.column(
            "SELECT step FROM lot_holds WHERE lot = '" + packed.lot() + "' ORDER BY recorded_at"));
  }

  @Test
  void darkened_jars_change_to_the_pool_of_their_new_grade() {
    Packed packed = packed(2024);
    long amber = pints("amber").getLong("[0].onHand");
    posts(
            "/api/lots/" + packed.lot() + "/regrade",
            "{'on': '2024-09-10', 'transmittance': 48, 'taste': 'clean', 'reason': 'Darkened in plastic'}")
        .statusCode(200)
        .body("grade", equalTo("dark"))
        .body("transmittance", equalTo(48.0f));
    assertEquals(amber - 100, pints("amber").getLong("[0].onHand"));
    assertTrue(pints("dark").getLong("[0].onHand") >= 100);
    posts(
            "/api/lots/" + packed.lot() + "/regrade",
            "{'on': '2024-10-10', 'transmittance': 48, 'taste': 'sour'}")
        .statusCode(200)
        .body("grade", equalTo("processing"))
        .body("held", equalTo(true));
  }

  @Test
  void lots_are_listed_in_parts_and_by_filter() {
    Packed packed = packed(2024);
    reads("/api/lots?kind=packed&limit=500")
        .body("items.kind", everyItem(equalTo("packed")))
        .body("items.lot", hasItem(packed.lot()));
    reads("/api/lots?kind=bulk&limit=500")
        .body("items.kind", everyItem(equalTo("bulk")))
        .body("items.lot", hasItem(packed.barrelLot()));
    reads("/api/lots?grade=amber&limit=500").body("items.grade", everyItem(equalTo("amber")));
    JsonPath page = reads("/api/lots?kind=bulk&limit=1").extract().jsonPath();
    reads("/api/lots?kind=bulk&limit=1&after=" + page.getString("next"))
        .body("items", hasSize(1))
        .body("items[0].lot", not(equalTo(page.getString("items[0].lot"))));
    reads("/api/lots?kind=packed&held=false&limit=500")
        .body("items.held", everyItem(equalTo(false)));
  }

  @ParameterizedTest
  @CsvSource({"kind=box, kind", "grade=blond, grade", "held=maybe, held", "limit=-1, limit"})
  void a_filter_that_cannot_be_read_is_named(String query, String field) {
    Owner.asks()
        .get("/api/lots?" + query)
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo(field));
  }

  @Test
  void a_grading_without_its_day_is_of_today() {
    String lot = packed(2024).lot();
    posts("/api/lots/" + lot + "/regrade", "{'transmittance': 30, 'taste': 'clean'}")
        .statusCode(200)
        .body("grade", equalTo("dark"));
  }

  /** Columns: what is done, the body, status, code, field named (none where none is at fault). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          hold    | {}                                                           | 400 | invalid-field | reason
          hold    | {'reason': ' '}                                              | 400 | invalid-field | reason
          hold    | {'reason': true}                                             | 400 | wrong-type    | reason
          hold    | {'why': 'x'}                                                 | 400 | unknown-field | why
          release | {'reason': ''}                                               | 400 | invalid-field | reason
          release | {'reason': 'x'}                                              | 409 | not-held      |
          regrade | {'on': '2024-07-01', 'transmittance': '60', 'taste': 'clean'}| 400 | wrong-type    | transmittance
          regrade | {'on': '2024-07-01', 'transmittance': -1, 'taste': 'clean'}  | 400 | invalid-field | transmittance
          regrade | {'on': '2024-07-01', 'transmittance': 60}                    | 400 | invalid-field | taste
          regrade | {'on': '2024-07-01', 'transmittance': 60, 'taste': 'sweet'}  | 400 | invalid-field | taste
          regrade | {'on': '2999-07-01', 'transmittance': 60, 'taste': 'clean'}  | 400 | in-the-future | on
          """)
  void what_cannot_be_right_is_refused_and_leaves_nothing(
      String what, String body, int status, String code, String field) {
    String lot = packed(2024).lot();
    Map<String, String> before = rows.fingerprint();
    posts("/api/lots/" + lot + "/" + what, body)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors[0].field", field == null ? nullValue() : equalTo(field));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void a_lot_nobody_made_is_not_found() {
    for (String path : new String[] {"", "/trace"}) {
      Owner.asks()
          .get("/api/lots/NONE-1" + path)
          .then()
          .statusCode(404)
          .body("code", equalTo("unknown-lot"));
    }
    posts("/api/lots/NONE-1/hold", "{'reason': 'x'}").statusCode(404);
    posts("/api/lots/NONE-1/release", "{'reason': 'x'}").statusCode(404);
    posts("/api/lots/NONE-1/regrade", "{'on': '2024-07-01', 'transmittance': 60, 'taste': 'clean'}")
        .statusCode(404);
  }

  private static Packed packed(int season) {
    String tag = newTag("B");
    String barrelLot =
        posts("/api/barrels", barrel(tag, season, "2024-03-28", 250, 42, 67.0, 60))
            .statusCode(201)
            .extract()
            .path("lot");
    String lot =
        posts(
                "/api/canning/runs",
                """
                {'on': '2024-06-20', 'draws': [{'barrel': '%s', 'all': true}],
                 'fillTemperature': {'value': 185, 'unit': 'degF'},
                 'fills': [{'container': 'PT', 'count': 100}, {'container': 'HP', 'count': 80}],
                 'transmittance': 58, 'taste': 'clean'}
                """
                    .formatted(tag))
            .statusCode(201)
            .extract()
            .path("lot");
    return new Packed(barrelLot, lot);
  }

  private static void counts(String lot, String container, int counted) {
    posts(
            "/api/stock/counts",
            """
            {'place': 'cool-room', 'countedAt': '2024-08-01T09:00:00Z', 'by': 'Orla',
             'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}
            """
                .formatted(container, lot, counted))
        .statusCode(201);
  }

  private static ValidatableResponse trace(String lot) {
    return reads("/api/lots/" + lot + "/trace");
  }

  private static JsonPath pints(String grade) {
    return reads("/api/availability?container=PT&grade=" + grade)
        .extract()
        .jsonPath()
        .setRootPath("items");
  }
}
