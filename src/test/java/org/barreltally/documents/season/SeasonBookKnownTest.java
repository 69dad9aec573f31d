package org.barreltally.documents.season;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.sugarbush.boiling.Woods.boil;
import static org.barreltally.sugarbush.boiling.Woods.concentrate;
import static org.barreltally.sugarbush.boiling.Woods.drawn;
import static org.barreltally.sugarbush.boiling.Woods.feed;
import static org.barreltally.sugarbush.boiling.Woods.sap;
import static org.hamcrest.Matchers.oneOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barreltally.SoundBook;
import org.barreltally.books.InABlankBook;
import org.barreltally.documents.Page;
import org.barreltally.sugarbush.boiling.Woods;
import org.junit.jupiter.api.Test;

/**
 * The sugarhouse and the costs of 2024 in its book, with every sum by hand; then the year is
 * closed, more is told of it, and its book stays what it was.
 */
@QuarkusTest
class SeasonBookKnownTest implements InABlankBook {

  private static final String PRICE = "'price': {'amount': 15.00, 'currency': 'USD'}";
  private static final String BOILS = "/api/boils/";

  private String own;
  private String leased;
  private String boil;
  private String drawOff;
  private String lot;
  private String show;

  @Test
  void the_sugarhouse_and_the_costs_are_told_and_stay_as_they_were_at_the_closing()
      throws Exception {
    boil_in_2024();
    can_and_sell_in_2024();
    String open = book();
    the_sugarhouse_by_hand(open);
    the_costs_by_hand(open);
    JsonPath flows = reads("/api/reconciliation/flows?season=2024").extract().jsonPath();
    String says = flows.getString("suspects[0].readings[0].says");
    assertTrue(open.contains(says), says + " is not in: " + open);

    asks().post("/api/years/2024/close").then().statusCode(200);
    String closed = book();
    the_sugarhouse_by_hand(closed);
    the_costs_by_hand(closed);
    assertFalse(closed.contains(says), "weighed again later, it would say something else");

    JsonPath before = reads("/api/sugarbush-season?season=2024").extract().jsonPath();
    tell_more_of_2024();
    JsonPath after = reads("/api/sugarbush-season?season=2024").extract().jsonPath();
    assertEquals(80, before.getInt("taps"));
    assertEquals(190, after.getInt("taps"), "90 and 100: what is known now");
    assertEquals(0, after.getDouble("drawn.mass.value"));
    assertEquals(closed, book(), "what was told after the closing is not in the book of the year");
    SoundBook.check();
  }

  private void boil_in_2024() {
    own = Woods.ownBush(2024, 60);
    leased = Woods.leasedBush(2024, 20);
    posts("/api/sap", sap("2024-03-10", own, 600, 2, "T-1")).statusCode(201);
    posts("/api/sap", sap("2024-03-10", leased, 400, 2, "T-1")).statusCode(201);
    posts("/api/concentrates", concentrate("2024-03-10", 1000, 2, "T-1", 250, 8, "C-1"))
        .statusCode(201);
    boil =
        posts("/api/boils", boil("2024-03-10", ", 'feeds': [" + feed(250, 8, "C-1") + "]"))
            .statusCode(201)
            .extract()
            .path("id");
    drawOff =
        posts(BOILS + boil + "/draw-offs", drawn("2024-03-10T15:00:00Z", 30.80))
            .statusCode(201)
            .extract()
            .path("drawOffs[0].id");
  }

  /** The dipstick shows some 2.5 gal less than the scale: one of the two is wrong. */
  private void can_and_sell_in_2024() {
    String tag = newTag("B-");
    posts(
            "/api/barrels",
            """
            {'tag': '%s', 'season': 2024, 'filledOn': '2024-03-14', 'material': 'stainless',
             'weighing': {'gross': {'value': 486.5, 'unit': 'lb'}, 'tare': {'value': 42, 'unit': 'lb'}},
             'dipstick': {'volume': {'value': 37.6, 'unit': 'gal'}, 'temperature': {'value': 68, 'unit': 'degF'}},
             %s, 'transmittance': 62, 'taste': 'clean'}
            """
                .formatted(tag, Woods.density(66.9)))
        .statusCode(201);
    posts(
            "/api/costs",
            "{'on': '2024-04-20', 'kind': 'fuel', 'season': 2024, 'amount': {'amount': 800.00, 'currency': 'USD'}}")
        .statusCode(201);
    lot =
        posts(
                "/api/canning/runs",
                """
                {'on': '2024-06-20', 'draws': [{'barrel': '%s', 'all': true}],
                 'fillTemperature': {'value': 186, 'unit': 'degF'},
                 'fills': [{'container': 'PT', 'count': 300}], 'transmittance': 59, 'taste': 'clean'}
                """
                    .formatted(tag))
            .statusCode(201)
            .extract()
            .path("lot");
    posts(
            "/api/sales",
            "{'channel': 'farm', 'at': '2024-08-01T15:00:00Z', 'lines': [{'container': 'PT', 'lot': '%s', 'count': 15, %s}], 'paid': {}}"
                .formatted(lot, PRICE))
        .statusCode(201);
    show();
  }

  private void show() {
    posts(
            "/api/price-lists",
            "{'name': 'Table', 'audience': 'show', 'validFrom': '2020-01-01', 'lines': [{'container': 'PT', "
                + PRICE
                + "}]}")
        .statusCode(201);
    show =
        posts(
                "/api/shows",
                "{'name': 'Plough Day', 'town': 'Fernby', 'starts': '2024-09-12', 'ends': '2024-09-12', 'state': 'accepted', 'booth': {'fee': {'amount': 30.00, 'currency': 'USD'}}}")
            .statusCode(201)
            .extract()
            .path("id");
    at("/pack-out", "{'at': '2024-09-11T18:00:00Z', " + jars(60) + "}");
    at(
        "/sales",
        "{'id': '%s', 'at': '2024-09-12T14:00:00Z', 'lines': [{'container': 'PT', 'count': 30, %s}], 'paid': {'cash': {'amount': 450.00, 'currency': 'USD'}}}"
            .formatted(UUID.randomUUID(), PRICE));
    at("/back", "{'at': '2024-09-12T20:00:00Z', " + jars(30) + "}");
    at("/settlement", "{}");
  }

  private void at(String path, String body) {
    posts("/api/shows/" + show + path, body).statusCode(oneOf(200, 201));
  }

  private String jars(int count) {
    return "'lines': [{'container': 'PT', 'lot': '%s', 'count': %d}]".formatted(lot, count);
  }

  /**
   * 600 and 400 L are 600 / 3.785412 = 158.50 and 105.67 gal, known to 5 % / √3 = 2.887 %: 4.58 and
   * 3.05, together √(4.58² + 3.05²) = 5.50. The Brix is known to 0.2 / √3 = 0.12. Densities from
   * the CRC Handbook: 250 L of 8 °Bx hold 250 × 1.0299 × 0.08 = 20.598 kg of sugar, 0.478 kg or
   * 1.05 lb more than went in, with 1.46 kg or 3.2 lb in doubt. At 66.9 °Bx that is 30.79 kg of
   * syrup, on a scale in air (0.075 percent less) 67.83 lb; drawn off were 30.80 kg by the scale,
   * 67.90 lb: 0.08 lb more, with 0.99 kg or 2.2 lb in doubt. By volume 30.823 kg / 1.3280 = 23.210
   * L = 6.1315 gal: 0.0766 for each of 80 taps; of it 6 tenths, 3.679 gal or 0.0613 for each of 60,
   * and 4 tenths, 2.453 or 0.1226 for each of 20.
   */
  private void the_sugarhouse_by_hand(String text) {
    holds(
        text, own + " 60 158.5 ± 4.6 2.00 ± 0.12 3.68 ± ", leased + " 20 105.7 ± 3.1 2.00 ± 0.12");
    holds(text, "All 80 264.2 ± 5.5 6.13 ± ", "United States 2024 0.342", "Vermont 2024 0.370");
    same(0.0613, text, own + " 60 .{20,45}? (\\d\\.\\d{4}) ± ", 0.0001);
    same(0.1226, text, leased + " 20 .{20,45}? (\\d\\.\\d{4}) ± ", 0.0001);
    same(0.0766, text, "All 80 .{10,45}? (\\d\\.\\d{4}) ± ", 0.0001);
    String made = "All 264.2 ± 7.6 66.0 ± 1.9 (-?[\\d.]+) ± ([\\d.]+) no, measuring";
    same(-1.05, text, made, 0.03);
    String boiled =
        "All 66.0 ± 1.9 ([\\d.]+) ± [\\d.]+ lb 67.9 ± 0.4 lb (-?[\\d.]+) ± ([\\d.]+) no,";
    same(67.83, text, boiled, 0.1);
    Matcher found = found(text, boiled);
    assertEquals(0.08, Double.parseDouble(found.group(2)), 0.1);
    assertEquals(2.2, Double.parseDouble(found.group(3)), 0.1);
  }

  /**
   * 800.00 on 300 pints are 2.6667 each: 15 sold at the farm 40.00, 30 at the show 80.00, and 255
   * left 680.00. The show: 450.00 less 80.00 and the fee of 30.00; all pints: 675.00 less 120.00.
   */
  private void the_costs_by_hand(String text) {
    holds(text, "What things cost", "Your tax preparer decides which method is for you");
    holds(text, "Method of the year: specific lot.", "Stood at the year's beginning 0.00 USD");
    holds(text, "Boiled: costs of seasons and lots 800.00 USD", "Opening and added 800.00 USD");
    holds(text, "Gone: Customers 120.00 USD", "Stands at the year's end 680.00 USD");
    holds(text, "Gone and closing 800.00 USD", "Cool room, in jars 255 680.00 USD");
    holds(text, "at the end of 2024-12-31", "All 680.00 USD");
    holds(text, "PT 45 675.00 USD 120.00 USD 555.00 USD");
    holds(text, "Plough Day, Fernby 30 450.00 USD 80.00 USD 30.00 USD 340.00 USD");
  }

  private void tell_more_of_2024() {
    posts("/api/sap", sap("2024-03-20", own, 500, 2.5, "T-2")).statusCode(201);
    posts("/api/concentrates", concentrate("2024-03-20", 500, 2.5, "T-2", 100, 9, "C-2"))
        .statusCode(201);
    posts("/api/boils", boil("2024-03-20", ", 'feeds': [" + feed(100, 9, "C-2") + "]"))
        .statusCode(201);
    posts(BOILS + boil + "/feeds", feed(10, 8, "C-1")).statusCode(201);
    posts(BOILS + boil + "/parts/" + drawOff + "/reversal", "{'reason': 'Another farm’s'}")
        .statusCode(201);
    posts("/api/bushes/" + own + "/taps", "{'season': 2024, 'from': '2024-02-10', 'count': 90}")
        .statusCode(201);
    Woods.leasedBush(2024, 80);
    for (String of : new String[] {"'season': 2024", "'show': '" + show + "'"}) {
      posts(
              "/api/costs",
              "{'on': '2024-09-12', 'kind': 'other', %s, 'amount': {'amount': 5.00, 'currency': 'USD'}}"
                  .formatted(of))
          .statusCode(201);
    }
    at("/settlement", "{'travel': {'amount': 12.00, 'currency': 'USD'}}");
  }

  /** Its words from the first chapter on, without the time it was drawn. */
  private static String book() throws Exception {
    byte[] pdf = reads("/api/season-book.pdf?season=2024").extract().asByteArray();
    return Page.text(pdf)
        .replaceAll("\\s+", " ")
        .replaceAll("Drawn on .{20}|stood at .{20}", "")
        .replaceAll("Unlike the rest.*", "");
  }

  private static void holds(String text, String... parts) {
    for (String part : parts) {
      assertTrue(text.contains(part), part + " is not in: " + text);
    }
  }

  private static void same(double expected, String text, String pattern, double within) {
    assertEquals(expected, Double.parseDouble(found(text, pattern).group(1)), within, pattern);
  }

  private static Matcher found(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertTrue(found.find(), pattern + " is not in: " + text);
    return found;
  }
}
