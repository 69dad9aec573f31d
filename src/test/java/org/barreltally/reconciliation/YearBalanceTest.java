package org.barreltally.reconciliation;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.UUID;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A barrel boiled, canned and gone every way there is: what it changes in the year's balance is
 * what was told, line by line. Masses are checked against the pack sheet and the scale.
 */
@QuarkusTest
class YearBalanceTest {

  private static final int SEASON = 2026;

  @Test
  void every_line_tells_what_happened_and_the_sum_closes() {
    final JsonPath before = balance("");
    String pint = newSize(16);
    String tag = newTag("B-");
    double barrelKg =
        posts("/api/barrels", barrel(tag, SEASON, "2026-03-14", 486.5, 42, 66.9, 62))
            .statusCode(201)
            .extract()
            .jsonPath()
            .getDouble("mass.value");
    JsonPath run = canned(tag, pint);
    String lot = run.getString("lot");
    sell(pint, lot, 5);
    posts(
            "/api/stock/write-offs",
            "{'place': 'cool-room', 'container': '%s', 'lot': '%s', 'count': 2, 'cause': 'sampled'}"
                .formatted(pint, lot))
        .statusCode(201);
    hand(pint, lot, 3);
    consign(pint, lot, 12, 9);

    JsonPath after = balance("");
    assertEquals(barrelKg, more(before, after, "made.mass.value"), 0.002);
    assertEquals(5, pieces(before, after, "out.sold"));
    assertEquals(2, pieces(before, after, "out.samples"));
    assertEquals(3, pieces(before, after, "out.shares"));
    assertEquals(3, pieces(before, after, "out.consignedSold"));
    assertEquals(0.25, more(before, after, "out.broken.volumeAt68F.value"), 0.005); // two pints
    assertEquals(9, pieces(before, after, "closing.consigned"));
    assertEquals(300 - 5 - 2 - 3 - 12, pieces(before, after, "closing.containers"));
    assertEquals(
        run.getDouble("shrink.byCause.filter.value")
            + run.getDouble("shrink.byCause.overfill.value"),
        more(before, after, "out.shrink.volumeAt68F.value"),
        0.005);
    assertEquals(
        run.getDouble("shrink.byCause.unexplained.value"),
        more(before, after, "unexplained.volumeAt68F.value"),
        0.005);
    assertEquals(
        run.getDouble("heel.volumeAt68F.value"),
        more(before, after, "closing.barrels.volumeAt68F.value"),
        0.005);
    assertCloses(after);
  }

  @Test
  void a_lost_posting_shows_as_unexplained_of_its_lot() {
    String pint = newSize(16);
    String tag = newTag("B-");
    posts("/api/barrels", barrel(tag, SEASON, "2026-03-14", 486.5, 42, 66.9, 62)).statusCode(201);
    String lot = canned(tag, pint).getString("lot");
    JsonPath before = balance("&lot=" + lot);
    assertEquals(300, before.getLong("closing.containers.pieces"));
    // Seven jars were given away and nobody wrote it down; the count finds 293.
    posts(
            "/api/stock/counts",
            "{'place': 'cool-room', 'countedAt': '2026-07-02T12:00:00Z', 'by': 'Orla', 'lines': [{'container': '%s', 'lot': '%s', 'count': 293}]}"
                .formatted(pint, lot))
        .statusCode(201);
    JsonPath after = balance("&lot=" + lot);
    assertEquals(7, after.getLong("unexplained.pieces") - before.getLong("unexplained.pieces"));
    assertTrue(after.getBoolean("unexplained.significant"));
    assertEquals(293, after.getLong("closing.containers.pieces"));
    assertCloses(after);
  }

  @Test
  void a_sale_taken_back_leaves_the_line_it_fell_into() {
    String pint = newSize(16);
    String tag = newTag("B-");
    posts("/api/barrels", barrel(tag, SEASON, "2026-03-14", 486.5, 42, 66.9, 62)).statusCode(201);
    String lot = canned(tag, pint).getString("lot");
    String sale = sell(pint, lot, 5);
    assertEquals(5, balance("&lot=" + lot).getLong("out.sold.pieces"));
    posts("/api/sales/" + sale + "/reversal", "{'reason': 'Wrong buyer'}").statusCode(200);
    JsonPath back = balance("&lot=" + lot);
    assertEquals(0, back.getLong("out.sold.pieces"));
    assertEquals(0, back.getLong("returned.pieces"));
  }

  @Test
  void the_next_year_opens_with_what_this_one_closed_with() {
    JsonPath year = balance("");
    JsonPath next = reads("/api/reconciliation?season=" + (SEASON + 1)).extract().jsonPath();
    for (String unit : new String[] {"mass.value", "volumeAt68F.value"}) {
      assertEquals(
          year.getDouble("closing.barrels." + unit)
              + year.getDouble("closing.containers." + unit)
              + year.getDouble("closing.consigned." + unit),
          next.getDouble("opening." + unit),
          0.01);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "?season=1", "?season=twenty"})
  void without_a_year_it_is_refused(String query) {
    Owner.asks().get("/api/reconciliation" + query).then().statusCode(400);
    Owner.asks()
        .get("/api/reconciliation?season=2026&lot=NOWHERE")
        .then()
        .statusCode(400)
        .body("code", equalTo("unknown-lot"));
  }

  /** 300 pints of some 0.628 kg out of 201.6 kg, two broken, four pounds in the filter. */
  private static JsonPath canned(String tag, String size) {
    return posts(
            "/api/canning/runs",
            """
            {'on': '2026-06-20', 'draws': [{'barrel': '%s', 'all': true}],
             'fillTemperature': {'value': 185, 'unit': 'degF'},
             'filterHoldUp': {'value': 4, 'unit': 'lb'}, 'overfill': {'value': 1, 'unit': 'g'},
             'fills': [{'container': '%s', 'count': 300, 'broken': 2}],
             'heel': {'weight': {'value': 19.4, 'unit': 'lb'}, 'keptIn': '%s'},
             'transmittance': 61, 'taste': 'clean'}
            """
                .formatted(tag, size, newTag("H-")))
        .statusCode(201)
        .extract()
        .jsonPath();
  }

  private static String sell(String size, String lot, int count) {
    return posts(
            "/api/sales",
            "{'channel': 'farm', 'lines': [{'container': '%s', 'lot': '%s', 'count': %d, 'price': {'amount': 15, 'currency': 'USD'}}], 'paid': {}}"
                .formatted(size, lot, count))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static void hand(String size, String lot, int count) {
    String lease =
        posts(
                "/api/leases",
                "{'landowner': 'Odile %s', 'bush': 'Upper Wend', 'season': 2026, 'basis': 'volume', 'governs': 'set', 'ratePerTap': {'amount': 1, 'currency': 'USD'}, 'price': {'amount': 50, 'currency': 'USD'}, 'taps': []}"
                    .formatted(UUID.randomUUID()))
            .statusCode(201)
            .extract()
            .path("id");
    posts(
            "/api/leases/" + lease + "/deliveries",
            "{'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}"
                .formatted(size, lot, count))
        .statusCode(201);
  }

  private static void consign(String size, String lot, int brought, int left) {
    String list =
        posts(
                "/api/price-lists",
                "{'name': 'R %s', 'audience': 'wholesale', 'validFrom': '2020-01-01', 'lines': [{'container': '%s', 'price': {'amount': 15, 'currency': 'USD'}}]}"
                    .formatted(size, size))
            .statusCode(201)
            .extract()
            .path("id");
    String shop =
        posts(
                "/api/shops",
                "{'name': 'Quillback %s', 'commissionPercent': 40, 'priceList': '%s'}"
                    .formatted(size, list))
            .statusCode(201)
            .extract()
            .path("code");
    String line = "{'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}";
    posts("/api/shops/" + shop + "/deliveries", line.formatted(size, lot, brought)).statusCode(201);
    posts("/api/shops/" + shop + "/counts", line.formatted(size, lot, left)).statusCode(201);
  }

  private static JsonPath balance(String rest) {
    return reads("/api/reconciliation?season=" + SEASON + rest).extract().jsonPath();
  }

  private static double more(JsonPath before, JsonPath after, String path) {
    return after.getDouble(path) - before.getDouble(path);
  }

  private static long pieces(JsonPath before, JsonPath after, String line) {
    return after.getLong(line + ".pieces") - before.getLong(line + ".pieces");
  }

  /** In = out + converted + unexplained + closing, to the rounding of each line to a gram. */
  private static void assertCloses(JsonPath year) {
    double in = 0;
    for (String line : new String[] {"opening", "made", "water", "bought", "returned"}) {
      in += year.getDouble(line + ".mass.value");
    }
    double out = 0;
    for (String line :
        new String[] {
          "out.sold",
          "out.gifts",
          "out.shares",
          "out.bulk",
          "out.consignedSold",
          "out.samples",
          "out.broken",
          "out.discarded",
          "out.shrink",
          "converted",
          "unexplained",
          "closing.barrels",
          "closing.containers",
          "closing.consigned"
        }) {
      out += year.getDouble(line + ".mass.value");
    }
    assertEquals(in, out, 0.02);
  }
}
