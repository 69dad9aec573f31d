package org.barreltally.netcontents;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.people.PersonFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Checks of an invented lot of 280 pints and 60 bottles of a size of its own. */
@QuarkusTest
class NetContentsOverRestTest {

  private static final String WORKED =
      "[625.16, 628.33, 626.08, 629.96, 624.45, 627.41, 626.59, 628.84, 625.78, 627.00, 624.04,"
          + " 629.16]";

  @Inject PersonFixture people;

  private static String newCode() {
    return "V" + UUID.randomUUID().toString().substring(0, 8).toUpperCase();
  }

  /** A run of pints and of bottles that hold so many mL. */
  private static String lotWith(String bottle, double mL) {
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Bottle', 'netContents': {'value': %s, 'unit': 'mL'}, 'material': 'glass'}"
                .formatted(bottle, mL))
        .statusCode(201);
    String tag = newTag("N");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    return posts(
            "/api/canning/runs",
            """
            {'on': '2026-06-20', 'draws': [{'barrel': '%s', 'all': true}],
             'fillTemperature': {'value': 185, 'unit': 'degF'},
             'fills': [{'container': 'PT', 'count': 280}, {'container': '%s', 'count': 30}],
             'transmittance': 57, 'taste': 'clean'}
            """
                .formatted(tag, bottle))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  private static ValidatableResponse check(String lot, String body) {
    return posts("/api/canning/runs/" + lot + "/net-contents-check", body);
  }

  private static String weights(int count, double grams) {
    return Collections.nCopies(count, grams).toString();
  }

  /** Source of the figures: the worked example of practice, 626.9 g and 1.9 g pass. */
  @Test
  void twelve_pints_pass_are_kept_and_read_again() {
    String lot = lotWith(newCode(), 321);
    ValidatableResponse answer =
        check(lot, "{'container': 'PT', 'lotSize': 160, 'netWeights': " + WORKED + "}")
            .statusCode(201)
            .body("regime", equalTo("us"))
            .body("mean.value", equalTo(626.9f))
            .body("mean.unit", equalTo("g"))
            .body("standardDeviation.value", equalTo(1.9f))
            .body("factor", equalTo(0.635f))
            .body("average", equalTo("pass"))
            .body("shortest.value", equalTo(624.04f))
            .body("tolerance", nullValue())
            .body("individual", equalTo("not-checked"))
            .body("individualWords", containsString("Handbook 133"))
            .body("suggestHold", equalTo(false))
            .body("why", nullValue())
            .body("weighing.standardUncertainty.value", equalTo(0.58f))
            .body("weighing.averageWithin", equalTo(true))
            .body("cautions.join(' ')", containsString("weights-and-measures office decides"));
    JsonPath first = answer.extract().jsonPath();
    assertEquals(628.0, first.getDouble("nominalWeight.value"), 0.05);
    String id = first.getString("id");
    answer.header("Location", endsWith("/api/canning/runs/" + lot + "/net-contents-checks/" + id));
    assertEquals(
        first.getMap(""),
        reads("/api/canning/runs/" + lot + "/net-contents-checks/" + id)
            .extract()
            .jsonPath()
            .getMap(""));
    reads("/api/canning/runs/" + lot + "/net-contents-checks")
        .body("items.size()", equalTo(1))
        .body("items[0].id", equalTo(id));
    reads("/api/canning/runs/" + lot).body("lot", equalTo(lot));
  }

  @Test
  void a_failed_check_says_why_the_lot_had_better_be_held_and_holds_nothing_itself() {
    String lot = lotWith(newCode(), 322);
    check(lot, "{'container': 'PT', 'lotSize': 160, 'netWeights': " + weights(12, 627) + "}")
        .statusCode(201)
        .body("average", equalTo("fail"))
        .body("averageMargin.value", not(nullValue()))
        .body("suggestHold", equalTo(true))
        .body("why", containsString("refill or relabel"));
    reads("/api/lots/" + lot).body("held", equalTo(false));
  }

  @Test
  void in_the_european_manner_single_jars_are_judged_by_t_and_twice_t() {
    String lot = lotWith(newCode(), 323);
    String nineteen = weights(19, 632).replace("]", "");
    check(
            lot,
            "{'regime': 'eu', 'container': 'PT', 'lotSize': 160, 'netWeights': "
                + nineteen
                + ", 585]}")
        .statusCode(201)
        .body("regime", equalTo("eu"))
        .body("factor", equalTo(0.640f))
        .body("average", equalTo("pass"))
        .body("tolerance.value", equalTo(14.2f))
        .body("tolerance.unit", equalTo("mL"))
        .body("toleranceWeight.value", equalTo(18.85f))
        .body("shortest.value", equalTo(585f))
        .body("beyondTolerance", equalTo(1))
        .body("beyondTwice", equalTo(1))
        .body("individual", equalTo("fail"))
        .body("suggestHold", equalTo(true))
        .body("why", containsString("single jars"));
    check(
            lot,
            "{'regime': 'eu', 'container': 'PT', 'lotSize': 160, 'netWeights': "
                + nineteen
                + ", 605]}")
        .body("beyondTwice", equalTo(0))
        .body("individual", equalTo("pass"))
        .body("suggestHold", equalTo(false));
    reads("/api/canning/runs/" + lot + "/net-contents-checks?limit=1")
        .body("items.size()", equalTo(1))
        .body("next", not(nullValue()));
  }

  @Test
  void what_the_owner_entered_for_a_size_counts_and_the_newer_before_the_older() {
    String bottle = newCode();
    String lot = lotWith(bottle, 324);
    double full = 430; // 324 mL at 628.0 g to 473.176 mL, to the gram
    String body =
        "{'container': '%s', 'lotSize': 12, 'netWeights': %s, %s]}"
            .formatted(bottle, weights(11, full + 5).replace("]", ""), full - 10)
            .replace("], ", ", ");
    check(lot, body).statusCode(201).body("individual", equalTo("not-checked"));

    variation("'over': {'value': 323.5, 'unit': 'mL'}, 'upTo': {'value': 324, 'unit': 'mL'}", 12);
    check(lot, body)
        .body("individual", equalTo("pass"))
        .body("tolerance.value", equalTo(12))
        .body("beyondTolerance", equalTo(0));
    variation("'container': '" + bottle + "'", 6);
    check(lot, body)
        .body("individual", equalTo("fail"))
        .body("beyondTolerance", equalTo(1))
        .body("beyondToleranceAllowed", equalTo(0))
        .body("suggestHold", equalTo(true));
    String newest = variation("'container': '" + bottle + "'", 9);
    check(lot, body).body("individual", equalTo("pass"));
    reads("/api/net-contents/allowed-variations/" + newest).body("allowed.value", equalTo(9));
    reads("/api/net-contents/allowed-variations?limit=500").body("items.id", hasItem(newest));
  }

  private static String variation(String where, int mL) {
    return posts(
            "/api/net-contents/allowed-variations",
            "{%s, 'allowed': {'value': %d, 'unit': 'mL'}, 'source': 'Invented for a test'}"
                .formatted(where, mL))
        .statusCode(201)
        .extract()
        .path("id");
  }

  @Test
  void a_lot_said_larger_than_the_run_is_minded() {
    String lot = lotWith(newCode(), 325);
    check(lot, "{'container': 'PT', 'lotSize': 300, 'netWeights': " + weights(24, 630) + "}")
        .statusCode(201)
        .body("cautions.join(' ')", containsString("filled 280"));
  }

  @Test
  void only_the_owner_enters_allowed_variations() {
    String name = people.with("canning", "a long enough password");
    given()
        .auth()
        .preemptive()
        .basic(name, "a long enough password")
        .contentType("application/json")
        .body(
            "{\"container\": \"PT\", \"allowed\": {\"value\": 9, \"unit\": \"mL\"}, \"source\": \"x\"}")
        .post("/api/net-contents/allowed-variations")
        .then()
        .statusCode(403);
  }

  static Stream<Arguments> wrong() {
    return Stream.of(
        wrong("[]", 400, "invalid-field", "netWeights"),
        wrong(weights(5_000, 628), 422, "wrong-sample-size", "netWeights"),
        wrong(weights(11, 628), 422, "wrong-sample-size", "netWeights"),
        wrong(weights(11, 628).replace("]", ", -1]"), 400, "invalid-field", "netWeights[11]"),
        wrong(weights(11, 628).replace("]", ", 0]"), 400, "invalid-field", "netWeights[11]"),
        wrong(weights(11, 628).replace("]", ", null]"), 400, "invalid-field", "netWeights[11]"),
        wrong(weights(11, 628).replace("]", ", '628']"), 400, "wrong-type", "netWeights[11]"),
        wrong(weights(11, 628).replace("]", ", 1e30]"), 400, "invalid-field", "netWeights[11]"),
        wrong(weights(11, 628).replace("]", ", 1300]"), 400, "invalid-field", "netWeights[11]"),
        wrong("628", 400, "wrong-type", "netWeights"),
        wrong(WORKED + ", 'lotSize2': 3", 400, "unknown-field", "lotSize2"),
        wrong(WORKED + ", 'regime': 'ours'", 400, "invalid-field", "regime"),
        wrong(WORKED + ", 'regime': 'eu'", 422, "wrong-sample-size", "netWeights"));
  }

  private static Arguments wrong(String weights, int status, String code, String field) {
    return Arguments.of(weights, status, code, field);
  }

  @ParameterizedTest(name = "{2} at {3}")
  @MethodSource("wrong")
  void wrong_weights_are_refused_by_name_and_nothing_is_kept(
      String weights, int status, String code, String field) {
    String lot = anyLot();
    int before = kept(lot);
    check(lot, "{'container': 'PT', 'lotSize': 160, 'netWeights': " + weights + "}")
        .statusCode(status)
        .contentType("application/problem+json")
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
    assertEquals(before, kept(lot));
  }

  private static String anyLot;

  private static String anyLot() {
    if (anyLot == null) {
      anyLot = lotWith(newCode(), 326);
    }
    return anyLot;
  }

  private static int kept(String lot) {
    return reads("/api/canning/runs/" + lot + "/net-contents-checks")
        .extract()
        .jsonPath()
        .getList("items")
        .size();
  }

  @Test
  void a_wrong_lot_container_or_size_of_lot_is_refused_by_name() {
    String lot = anyLot();
    String right = "{'container': 'PT', 'lotSize': 160, 'netWeights': " + WORKED + "}";
    check("P000000-1", right).statusCode(404).body("code", equalTo("unknown-run"));
    check(lot, right.replace("PT", "NOSUCH"))
        .statusCode(400)
        .body("code", equalTo("unknown-container"))
        .body("errors.field", hasItem("container"));
    check(lot, right.replace("PT", "HP"))
        .statusCode(422)
        .body("code", equalTo("container-not-in-run"))
        .body("errors.field", hasItem("container"));
    for (String size : List.of("0", "1", "-5", "1000001")) {
      check(lot, right.replace("160", size))
          .statusCode(400)
          .body("errors.field", hasItem("lotSize"));
    }
    check(lot, right.replace("'lotSize': 160, ", ""))
        .statusCode(400)
        .body("errors.field", hasItem("lotSize"));
    check(lot, right.replace("'container': 'PT', ", ""))
        .statusCode(400)
        .body("errors.field", hasItem("container"));
    asks().get("/api/canning/runs/P000000-1/net-contents-checks").then().statusCode(404);
    asks()
        .get("/api/canning/runs/" + lot + "/net-contents-checks/" + UUID.randomUUID())
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-net-contents-check"));
  }

  static Stream<Arguments> wrongVariations() {
    String mL = "'allowed': {'value': 9, 'unit': 'mL'}";
    String source = "'source': 'Invented'";
    return Stream.of(
        Arguments.of("'container': 'NOSUCH', " + mL + ", " + source, "container"),
        Arguments.of(mL + ", " + source, "container"),
        Arguments.of(
            "'container': 'PT', 'over': {'value': 1, 'unit': 'mL'}, " + mL + ", " + source, "over"),
        Arguments.of("'over': {'value': 1, 'unit': 'mL'}, " + mL + ", " + source, "upTo"),
        Arguments.of(
            "'over': {'value': 9, 'unit': 'mL'}, 'upTo': {'value': 8, 'unit': 'mL'}, "
                + mL
                + ", "
                + source,
            "upTo"),
        Arguments.of(
            "'over': {'value': -9, 'unit': 'mL'}, 'upTo': {'value': 8, 'unit': 'mL'}, "
                + mL
                + ", "
                + source,
            "over"),
        Arguments.of(
            "'over': {'value': 1, 'unit': 'lb'}, 'upTo': {'value': 8, 'unit': 'mL'}, "
                + mL
                + ", "
                + source,
            "over.unit"),
        Arguments.of("'container': 'PT', " + source, "allowed"),
        Arguments.of("'container': 'PT', " + mL, "source"),
        Arguments.of(
            "'container': 'PT', " + mL + ", 'source': '" + "x".repeat(201) + "'", "source"),
        Arguments.of(
            "'container': 'PT', 'allowed': {'value': 0, 'unit': 'mL'}, " + source, "allowed"),
        Arguments.of(
            "'container': 'PT', 'allowed': {'value': 16, 'unit': 'floz'}, " + source, "allowed"),
        Arguments.of(
            "'container': 'PT', 'allowed': {'value': 9, 'unit': 'degF'}, " + source,
            "allowed.unit"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("wrongVariations")
  void a_wrong_allowed_variation_is_refused_by_name(String body, String field) {
    posts("/api/net-contents/allowed-variations", "{" + body + "}")
        .statusCode(400)
        .body("errors.field", hasItem(field));
  }
}
