package org.barreltally.shows.plan;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans asked for over REST, from the shows of the book. */
@QuarkusTest
class PlanOverRestTest {

  private static final String TABLE =
      "'booth': {'tables': [{'lengthInches': 96, 'depthInches': 30, 'tiers': 3}]}";

  @Inject ShelfFixture shelf;

  @Test
  void past_shows_their_sold_out_jars_and_what_can_be_promised_make_the_plan() {
    String size = size();
    String lot = shelf.lotWith(400, size);
    String name = "Sheep Fair " + UUID.randomUUID().toString().substring(0, 6);
    past(name + " 2024", "2024-09-14", size, lot, 40, 4);
    past(name + " 2025", "2025-09-13", size, lot, 44, 0);
    String show = book(name + " 2026", "2026-09-12", ", 'visitorsExpected': 2000, " + TABLE);

    JsonPath plan = plan(show, only(size)).statusCode(200).extract().jsonPath();
    assertEquals(1, plan.getList("items").size());
    String why = plan.getString("items[0].why");
    assertTrue(why.contains("36 of 40 sold in 2024, all 44 sold in 2025"), why);
    assertTrue(plan.getInt("items[0].take") > 40, why);
    assertEquals("demand", plan.getString("items[0].limitedBy"));
    assertEquals(400 - 36 - 44, plan.getInt("items[0].available"));
    assertTrue(plan.getDouble("items[0].expected") > 36, why);

    plan(show, "{'costs': {'cartingBack': {'amount': 40, 'currency': 'USD'}}, " + inner(size) + "}")
        .body("items[0].take", lessThanOrEqualTo(plan.getInt("items[0].take") - 10));
  }

  @Test
  void a_first_show_is_planned_by_visitors_and_says_it_is_a_guess() {
    String size = size();
    shelf.lotWith(20, size);
    String show = book("First Fair", "2026-09-20", ", 'visitorsExpected': 3000, " + TABLE);
    plan(
            show,
            "{'firstGuess': [{'container': '%s', 'grade': 'amber', 'per100Visitors': 2}], %s}"
                .formatted(size, inner(size)))
        .statusCode(200)
        .body("items[0].expected", equalTo(60.0f))
        .body("items[0].take", equalTo(20))
        .body("items[0].limitedBy", equalTo("promise"))
        .body(
            "items[0].why",
            allOf(containsString("your first guess"), containsString("only 20 can be promised")));
  }

  @Test
  void a_small_vehicle_and_a_small_table_cut_the_plan() {
    String size = size();
    shelf.lotWith(500, size);
    String show =
        book(
            "Hill Fair",
            "2026-09-27",
            ", 'visitorsExpected': 9000, 'vehicleLoad': {'value': 40, 'unit': 'kg'}, " + TABLE);
    String guess =
        "'firstGuess': [{'container': '%s', 'grade': 'amber', 'per100Visitors': 2}], %s"
            .formatted(size, inner(size));
    // a jar is 0.628 + 0.300 kg; 30 kg carry 32
    plan(show, "{'otherLoad': {'value': 10, 'unit': 'kg'}, " + guess + "}")
        .body("items[0].take", equalTo(32))
        .body("items[0].limitedBy", equalTo("vehicle"))
        .body("load.value", equalTo(39.7f));
    // 28.8 inches of 10 inches depth: 8 facings of 3.5 inches, 2 deep
    plan(
            show,
            "{'vehicleLoad': {'value': 900, 'unit': 'kg'}, 'displayPercent': 90, 'footprints':"
                + " [{'container': '%s', 'widthInches': 3.5, 'depthInches': 3.5}], %s}"
                    .formatted(size, guess))
        .body("items[0].take", equalTo(16))
        .body("items[0].facings", equalTo(8))
        .body("items[0].limitedBy", equalTo("table"))
        .body("shelfInchesTaken", equalTo(28.0f));
  }

  @Test
  void what_is_reserved_for_this_show_can_be_promised_to_it_and_not_to_others() {
    String size = size();
    shelf.lotWith(30, size);
    String show = book("Own Fair", "2026-10-04", ", 'visitorsExpected': 9000, " + TABLE);
    String other = book("Other Fair", "2026-10-11", ", 'visitorsExpected': 9000, " + TABLE);
    posts(
            "/api/shows/" + show + "/reservations",
            "{'lines': [{'container': '%s', 'grade': 'amber', 'count': 25}]}".formatted(size))
        .statusCode(201);
    plan(show, only(size)).body("items[0].available", equalTo(30));
    plan(other, only(size)).body("items[0].available", equalTo(5));
  }

  @Test
  void a_plan_without_a_word_says_what_it_assumes_and_changes_nothing() {
    String size = size();
    shelf.lotWith(30, size);
    String show = book("Quiet Fair", "2026-10-18", ", 'visitorsExpected': 1000, " + TABLE);
    plan(show, "{}")
        .statusCode(200)
        .body("items.container", hasItem(size))
        .body("assumptions", hasItem(containsString("Half the price")))
        .body("cautions", hasSize(greaterThan(0)));
    Owner.reads("/api/availability?container=" + size)
        .body("items[0].available", equalTo(30))
        .body("items[0].reserved", equalTo(0));
  }

  @Test
  void without_tables_or_show_there_is_no_plan() {
    String show = book("Bare Fair", "2026-10-25", "");
    plan(show, "{}").statusCode(422).body("code", equalTo("no-tables"));
    plan(UUID.randomUUID().toString(), "{}").statusCode(404).body("code", equalTo("unknown-show"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{'costs': {'cartingBack': {'amount': -1, 'currency': 'USD'}}} | 422 | negative-cost | costs.cartingBack",
        "{'costs': {'runningOut': {'amount': -0.01, 'currency': 'USD'}}} | 422 | negative-cost | costs.runningOut",
        "{'costs': {'marginPercent': -5}} | 422 | negative-cost | costs.marginPercent",
        "{'costs': {'marginPercent': 0}} | 400 | invalid-field | costs.marginPercent",
        "{'costs': {'runningOut': {'amount': 1, 'currency': 'CAD'}}} | 400 | currency-mismatch | costs.runningOut",
        "{'visitors': 0} | 400 | invalid-field | visitors",
        "{'refills': -1} | 400 | invalid-field | refills",
        "{'displayPercent': 100} | 400 | invalid-field | displayPercent",
        "{'vehicleLoad': {'value': 3, 'unit': 'gal'}} | 400 | invalid-field | vehicleLoad",
        "{'otherLoad': {'value': -3, 'unit': 'kg'}} | 400 | invalid-field | otherLoad",
        "{'firstGuess': [{'container': 'PT'}]} | 400 | invalid-field | firstGuess[0]",
        "{'footprints': [{'container': 'PT', 'widthInches': 0, 'depthInches': 3}]} | 400 | invalid-field | footprints[0].widthInches",
        "{'only': [{'grade': 'dark'}]} | 400 | invalid-field | only[0].container"
      })
  void a_question_that_cannot_be_answered_is_refused(
      String json, int status, String code, String field) {
    String show = book("Asked Fair", "2026-11-01", ", " + TABLE);
    plan(show, json)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field));
  }

  private static ValidatableResponse plan(String show, String json) {
    return posts("/api/shows/" + show + "/plan", json);
  }

  private static String only(String size) {
    return "{" + inner(size) + "}";
  }

  private static String inner(String size) {
    return "'only': [{'container': '" + size + "'}]";
  }

  private static String book(String name, String day, String rest) {
    return posts(
            "/api/shows",
            "{'name': '%s', 'town': 'Fernby', 'starts': '%s', 'ends': '%s', 'state': 'accepted'%s}"
                .formatted(name, day, day, rest))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static void past(
      String name, String day, String size, String lot, int taken, int broughtHome) {
    String show = book(name, day, ", 'visitorsExpected': 2000");
    posts("/api/shows/" + show + "/pack-out", lines(size, lot, taken)).statusCode(201);
    posts("/api/shows/" + show + "/back", lines(size, lot, broughtHome)).statusCode(201);
  }

  private static String lines(String size, String lot, int count) {
    return "{'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}".formatted(size, lot, count);
  }

  /** A jar size of this test's own: 628 g of syrup in 300 g of glass. */
  private static String size() {
    String code = "W" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Tried jar', 'netContents': {'value': 16, 'unit': 'floz'}, 'material': 'glass', 'emptyWeight': {'value': 300, 'unit': 'g'}}"
                .formatted(code))
        .statusCode(201);
    return code;
  }
}
