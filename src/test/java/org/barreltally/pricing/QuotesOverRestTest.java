package org.barreltally.pricing;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.pricing.EnteredLists.entered;
import static org.barreltally.pricing.EnteredLists.list;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;

/** What baskets cost by a list, with deals and tax, and which rate of tax holds. */
@QuarkusTest
class QuotesOverRestTest {

  @Test
  void a_quote_applies_deals_and_tax_and_stores_nothing() {
    String place = "Elmshire/" + newTag("Tapping ");
    posts(
            "/api/tax-rates",
            "{'productClass': 'food', 'place': '%s', 'percent': 6, 'from': '2026-01-01'}"
                .formatted(place))
        .statusCode(201);
    String id = entered(list("show", "2026-07-01", "9.00", ""));
    // half-pints 16 + 9 over amber 2 and dark 1, a third each of 25; quart 25; tax 1.00, 0.50, 1.50
    posts(
            "/api/price-lists/" + id + "/quote",
            """
            {'lines': [{'container': 'HP', 'grade': 'amber', 'count': 2}, {'container': 'HP', 'grade': 'dark', 'count': 1},
                       {'container': 'QT', 'count': 1}], 'deal': true, 'place': '%s', 'on': '2026-08-15'}
            """
                .formatted(place.toUpperCase(java.util.Locale.ROOT)))
        .statusCode(200)
        .body("lines.amount.amount*.toDouble()", contains(16.67, 8.33, 25.0))
        .body("lines.tax.amount*.toDouble()", contains(1.0, 0.5, 1.5))
        .body("lines[0].taxPercent.toDouble()", equalTo(6.0))
        .body("deals[0].times", equalTo(1))
        .body("saved.amount.toDouble()", equalTo(2.0))
        .body("net.amount.toDouble()", equalTo(50.0))
        .body("tax.amount.toDouble()", equalTo(3.0))
        .body("total.amount.toDouble()", equalTo(53.0));
  }

  @Test
  void prices_with_tax_in_them_are_taken_apart() {
    String place = newTag("Mark");
    posts(
            "/api/tax-rates",
            "{'productClass': 'food', 'place': '%s', 'percent': 7, 'from': '2026-01-01'}"
                .formatted(place))
        .statusCode(201);
    String id = entered(list("show", "2026-07-01", "9.00", "'taxIncluded': true, "));
    // 25 × 7 / 107 = 1.6355…
    posts(
            "/api/price-lists/" + id + "/quote",
            "{'lines': [{'container': 'QT', 'count': 1}], 'place': '%s', 'on': '2026-08-15'}"
                .formatted(place))
        .statusCode(200)
        .body("net.amount.toDouble()", equalTo(23.36))
        .body("tax.amount.toDouble()", equalTo(1.64))
        .body("total.amount.toDouble()", equalTo(25.0));
  }

  @Test
  void a_rate_holds_from_its_day_for_its_town_else_for_the_region() {
    String region = newTag("Elm");
    String town = region + "/Nether Tapping";
    rate(region, "6", "2026-01-01");
    rate(region, "6.5", "2026-07-01");
    rate(town, "7", "2026-03-01");
    assertEquals("missing", holding(region, "2025-12-31"));
    assertEquals("6", holding(region, "2026-06-30"));
    assertEquals("6.5", holding(region, "2026-07-01"));
    assertEquals("6", holding(town, "2026-02-28"));
    assertEquals("7", holding(town, "2026-08-01"));
    assertEquals("6.5", holding(region + "/Over Tapping", "2026-08-01"));
    // entered again from the same day: the later entry counts
    rate(town, "0", "2026-03-01");
    assertEquals("0", holding(town, "2026-08-01"));
  }

  private static void rate(String place, String percent, String from) {
    String id =
        posts(
                "/api/tax-rates",
                "{'productClass': 'other', 'place': '%s', 'percent': %s, 'from': '%s'}"
                    .formatted(place, percent, from))
            .statusCode(201)
            .extract()
            .path("id");
    reads("/api/tax-rates/" + id).body("place", equalTo(place));
  }

  private static String holding(String place, String on) {
    var answer =
        asks()
            .queryParam("productClass", "other")
            .queryParam("place", place)
            .queryParam("on", on)
            .get("/api/tax-rates/holding");
    return answer.statusCode() == 404
        ? "missing"
        : answer.then().statusCode(200).extract().path("percent").toString();
  }
}
