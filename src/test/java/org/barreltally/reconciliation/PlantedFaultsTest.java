package org.barreltally.reconciliation;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.UUID;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * Seasons played over REST with one thing wrong in each: the report must name it first, and tell by
 * how much. Each plays in a long past year that no other test meets.
 *
 * <p>A true barrel holds 444.5 lb at 66.9 °Bx: 201.6 kg of weight, 201.8 kg of mass in air of 1.2
 * kg/m³; 40.15 gal at 11.073 lb. Of it 302 pints of 628.5 g and 1 g more are 190.1 kg, the filter
 * holds 1.8 kg, and 9.8 kg or 21.7 lb are left for the heel.
 */
@QuarkusTest
class PlantedFaultsTest {

  private static final double PINT_KG = 0.6285;
  private static final double LB_PER_KG = 2.20462;

  @AfterEach
  void the_book_is_sound() {
    SoundBook.check();
  }

  @Test
  void in_a_sound_season_nothing_is_suspected() {
    String size = newSize(16);
    String lot = canned(1943, filled(1943, 444.5, 40.1), size, 300, 21.7).getString("lot");
    canned(1943, filled(1943, 444.5, 40.2), size, 300, 21.7);
    count(1943, size, lot, 300);
    JsonPath season = season(1943);
    assertEquals(List.of(), season.getList("suspects"));
    assertTrue(season.getBoolean("globalTest.passed"));
    assertTrue(season.getInt("globalTest.degreesOfFreedom") >= 5, season.prettify());
  }

  @Test
  void a_barrel_weighed_20_lb_too_high_is_named_first() {
    String size = newSize(16);
    canned(1944, filled(1944, 444.5, 40.1), size, 300, 21.7);
    // True: 424.5 lb, 38.3 gal by the stick, 286 pints and a heel of 21.1 lb. Told: 444.5 lb.
    String wrong = filled(1944, 444.5, 38.3);
    canned(1944, wrong, size, 286, 21.1);
    JsonPath season = season(1944);
    assertFalse(season.getBoolean("globalTest.passed"));
    assertEquals(1, season.getList("suspects").size(), season.prettify());
    List<String> flows = season.getList("suspects[0].readings.flow");
    assertTrue(flows.get(0).startsWith(wrong), flows.toString());
    assertTrue(flows.get(0).contains("filling"), flows.toString());
    assertEquals(20, season.getDouble("suspects[0].readings[0].error.weight.value"), 1.5);
    assertEquals(
        20 / 11.073, season.getDouble("suspects[0].readings[0].error.volumeAt68F.value"), 0.15);
    assertTrue(season.getBoolean("suspects[0].restAgrees"));
    // The others keep their word.
    assertEquals(
        List.of(flows.get(0)),
        season.getList("flows.findAll { it.suspect && it.measuredBy == 'weighed' }.name"));
  }

  @Test
  void a_second_weighing_that_is_wrong_is_told_from_the_first() {
    String size = newSize(16);
    String barrel = filled(1945, 444.5, 40.1);
    posts(
            "/api/barrels/" + barrel + "/weighings",
            "{'on': '1945-05-02', 'weighing': {'gross': {'value': 501.5, 'unit': 'lb'}}}")
        .statusCode(201);
    canned(1945, barrel, size, 300, 21.7);
    JsonPath season = season(1945);
    String first = season.getString("suspects[0].readings[0].flow");
    assertTrue(first.startsWith(barrel) && first.endsWith("weighed again"), season.prettify());
    assertEquals(15, season.getDouble("suspects[0].readings[0].error.weight.value"), 1.5);
    assertTrue(season.getBoolean("suspects[0].restAgrees"));
  }

  @Test
  void a_lost_pallet_of_jars_points_at_the_room_they_left() {
    String size = newSize(16);
    String lot = canned(1946, filled(1946, 444.5, 40.1), size, 300, 21.7).getString("lot");
    String show = show(1946, size);
    packOut(show, 1946, size, lot, 60);
    sell(show, 1946, size, lot, 20);
    back(show, 1946, size, lot, 40);
    // 280 should stand there; 60 of them were carried off and nobody wrote it down.
    count(1946, size, lot, 220);
    JsonPath season = season(1946);
    assertEquals(1, season.getList("suspects").size(), season.prettify());
    String room = "Cool room, " + size;
    assertTrue(
        season.getList("suspects[0].readings.place").contains(room), season.getString("suspects"));
    assertTrue(
        season.getList("suspects[0].readings.flow").contains(room + ": counted"),
        "what cannot be told apart is named too: " + season.getString("suspects"));
    double pounds =
        season.getDouble(
            "suspects[0].readings.find { it.place == '" + room + "' }.error.weight.value");
    assertEquals(60 * PINT_KG * LB_PER_KG, pounds, 1);
    // What went over the scale is not suspected.
    assertEquals(
        List.of(), season.getList("flows.findAll { it.suspect && it.measuredBy == 'weighed' }"));
  }

  @Test
  void sales_nobody_wrote_down_point_at_the_table() {
    String size = newSize(16);
    String lot = canned(1947, filled(1947, 444.5, 40.1), size, 300, 21.7).getString("lot");
    String show = show(1947, size);
    packOut(show, 1947, size, lot, 100);
    sell(show, 1947, size, lot, 20);
    back(show, 1947, size, lot, 50); // 80 should have come home
    count(1947, size, lot, 250);
    JsonPath season = season(1947);
    String table = reads("/api/shows/" + show).extract().path("name");
    List<String> places = season.getList("suspects[0].readings.place");
    assertTrue(
        places.stream().anyMatch(each -> each != null && each.startsWith(table)),
        season.prettify());
    assertEquals(
        30 * PINT_KG * LB_PER_KG,
        season.getDouble("suspects[0].readings.find { it.place != null }.error.weight.value"),
        2);
  }

  @Test
  void a_year_in_which_nothing_happened_says_so() {
    JsonPath season = season(1930);
    assertEquals("Nothing was measured in 1930.", season.getString("says"));
    assertNull(season.get("globalTest"));
  }

  private static JsonPath season(int year) {
    return reads("/api/reconciliation/flows?season=" + year).extract().jsonPath();
  }

  /** A barrel weighed net of 42 lb and dipped at 68 °F; its tag. */
  private static String filled(int year, double netPounds, double gallons) {
    String tag = newTag("B-");
    posts(
            "/api/barrels",
            """
            {'tag': '%s', 'season': %d, 'filledOn': '%d-03-14', 'material': 'stainless',
             'weighing': {'gross': {'value': %s, 'unit': 'lb'}, 'tare': {'value': 42, 'unit': 'lb'}},
             'dipstick': {'volume': {'value': %s, 'unit': 'gal'},
                          'temperature': {'value': 68, 'unit': 'degF'}},
             'density': {'reading': {'value': 66.9, 'unit': 'Brix'},
                         'temperature': {'value': 68, 'unit': 'degF'},
                         'instrument': 'refractometer', 'reference': {'value': 68, 'unit': 'degF'}},
             'transmittance': 62, 'taste': 'clean'}
            """
                .formatted(tag, year, year, netPounds + 42, gallons))
        .statusCode(201);
    return tag;
  }

  private static JsonPath canned(int year, String tag, String size, int jars, double heelPounds) {
    return posts(
            "/api/canning/runs",
            """
            {'on': '%d-06-20', 'draws': [{'barrel': '%s', 'all': true}],
             'fillTemperature': {'value': 185, 'unit': 'degF'},
             'filterHoldUp': {'value': 4, 'unit': 'lb'}, 'overfill': {'value': 1, 'unit': 'g'},
             'fills': [{'container': '%s', 'count': %d, 'broken': 2}],
             'heel': {'weight': {'value': %s, 'unit': 'lb'}, 'keptIn': '%s'},
             'transmittance': 61, 'taste': 'clean'}
            """
                .formatted(year, tag, size, jars, heelPounds, newTag("H-")))
        .statusCode(201)
        .extract()
        .jsonPath();
  }

  private static void count(int year, String size, String lot, int found) {
    posts(
            "/api/stock/counts",
            "{'place': 'cool-room', 'countedAt': '%d-11-02T12:00:00Z', 'by': 'Orla', 'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}"
                .formatted(year, size, lot, found))
        .statusCode(201);
  }

  private static String show(int year, String size) {
    String list =
        posts(
                "/api/price-lists",
                "{'name': 'T %s', 'audience': 'show', 'validFrom': '1930-01-01', 'lines': [{'container': '%s', 'price': {'amount': 15, 'currency': 'USD'}}]}"
                    .formatted(size, size))
            .statusCode(201)
            .extract()
            .path("id");
    return posts(
            "/api/shows",
            "{'name': 'Plough Day %s', 'town': 'Fernby', 'starts': '%d-09-12', 'ends': '%d-09-12', 'state': 'accepted', 'priceList': '%s'}"
                .formatted(size, year, year, list))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static String line(String size, String lot, int count) {
    return "'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]".formatted(size, lot, count);
  }

  private static void packOut(String show, int year, String size, String lot, int count) {
    posts(
            "/api/shows/" + show + "/pack-out",
            "{'at': '%d-09-11T18:00:00Z', %s}".formatted(year, line(size, lot, count)))
        .statusCode(201);
  }

  private static void sell(String show, int year, String size, String lot, int count) {
    posts(
            "/api/shows/" + show + "/sales",
            "{'id': '%s', 'at': '%d-09-12T14:00:00Z', %s, 'paid': {'cash': {'amount': %d, 'currency': 'USD'}}}"
                .formatted(UUID.randomUUID(), year, line(size, lot, count), 15 * count))
        .statusCode(201);
  }

  private static void back(String show, int year, String size, String lot, int count) {
    posts(
            "/api/shows/" + show + "/back",
            "{'at': '%d-09-12T20:00:00Z', %s}".formatted(year, line(size, lot, count)))
        .statusCode(201);
  }
}
