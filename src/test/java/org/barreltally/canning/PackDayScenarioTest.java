package org.barreltally.canning;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import org.barreltally.ledger.Invariants;
import org.junit.jupiter.api.Test;

/**
 * A pack day at an invented sugarhouse, told from the three barrels to the jars on the shelf. The
 * expected figures were worked out by hand from the weights, the sucrose densities and the
 * container sizes: 801.0 lb of blend at Σ(lb × Brix) / Σ lb = 53,609.15 / 801.0 = 66.93 °Bx, 72.31
 * gal at 11.0775 lb/gal; 8 gallons, 12 half-gallons, 60 quarts, 160 pints and 320 half-pints are
 * 69.0 gal; 3 pints and 2 half-pints broken are 0.5 gal; a heel of 19.4 lb is 1.75 gal. What is
 * left is 1.06 gal, 1.46 %, or 1.56 gal, 2.16 %, with the breakage. Tolerances: 0.02 gal, 0.01 °Bx.
 */
@QuarkusTest
class PackDayScenarioTest {

  private static final double GAL = 0.02;
  private static final double BX = 0.01;

  @Inject Invariants invariants;

  @Test
  void three_barrels_one_of_them_from_last_year_become_jars_with_the_shrink_worked_out() {
    String first = newTag("A");
    String half = newTag("B");
    String lastYears = newTag("C");
    String heel = newTag("H");

    // In March a barrel is weighed and dipped; stick and scale agree.
    fills(
        with(barrel(first, 2024, "2024-03-14", 486.5, 42.0, 66.9, 62), dipped(40.0, 68)),
        40.13,
        false);

    // The second is half full, and the stick says 1.10 gal more than the scale: it is flagged.
    JsonPath flagged =
        fills(
            with(barrel(half, 2024, "2024-03-20", 268.0, 41.5, 67.4, 55), dipped(21.5, 68)),
            20.40,
            true);
    assertEquals(1.10, flagged.getDouble("dipstickGap.volume.value"), GAL);

    // Had the stick been read at 185 °F it would be 20.88 gal, 0.48 over: within what both may be
    // off.
    JsonPath hot =
        fills(
            with(barrel(newTag("D"), 2024, "2024-03-20", 268.0, 41.5, 67.4, 55), dipped(21.5, 185)),
            20.40,
            false);
    assertEquals(0.48, hot.getDouble("dipstickGap.volume.value"), GAL);

    // The third was left over from last year.
    fills(
        with(barrel(lastYears, 2023, "2023-04-02", 172.5, 42.5, 66.2, 48), dipped(11.75, 68)),
        11.78,
        false);

    // In June the maker thinks it through first: nothing is stored.
    String draws =
        "[{'barrel': '%s', 'all': true}, {'barrel': '%s', 'all': true}, {'barrel': '%s', 'all': true}]"
            .formatted(first, half, lastYears);
    posts(
            "/api/canning/what-if",
            """
            {'on': '2024-06-20', 'draws': %s, 'fillTemperature': {'value': 185, 'unit': 'degF'},
             'fills': [{'container': 'GAL', 'count': 8}, {'container': 'HP', 'rest': true}]}
            """
                .formatted(draws))
        .statusCode(200)
        .body("blend.transmittanceEstimate.toDouble()", closeTo(57.5, 0.1))
        .body("blend.weight.value.toDouble()", closeTo(801.0, 0.05))
        .body("fills[1].count", equalTo((int) Math.floor((72.31 - 8) * 16)))
        .body("grade", equalTo(null));
    reads("/api/barrels/" + first).body("state", equalTo("full"));

    // Then the day is done and told.
    JsonPath run =
        posts(
                "/api/canning/runs",
                """
                {'on': '2024-06-20', 'draws': %s, 'fillTemperature': {'value': 185, 'unit': 'degF'},
                 'fills': [{'container': 'GAL', 'count': 8}, {'container': 'HGAL', 'count': 12},
                           {'container': 'QT', 'count': 60},
                           {'container': 'PT', 'count': 160, 'broken': 3},
                           {'container': 'HP', 'count': 320, 'broken': 2}],
                 'heel': {'weight': {'value': 19.4, 'unit': 'lb'}, 'keptIn': '%s'},
                 'transmittance': 57, 'taste': 'clean'}
                """
                    .formatted(draws, heel))
            .statusCode(201)
            .header("Location", startsWith("http"))
            .body("lot", startsWith("P240620-"))
            .body("grade", equalTo("amber"))
            .body("seasons", contains(2023, 2024))
            .body("brix.toDouble()", closeTo(66.93, BX))
            .body("blend.weight.value.toDouble()", closeTo(801.0, 0.05))
            .body("blend.volumeAt68F.value.toDouble()", closeTo(72.31, GAL))
            .body("blend.thermalShrinkPercent.toDouble()", closeTo(2.9, 0.05))
            .body("heel.volumeAt68F.value.toDouble()", closeTo(1.75, GAL))
            .body("shrink.volumeAt68F.value.toDouble()", closeTo(1.56, GAL))
            .body("shrink.percent.toDouble()", closeTo(2.16, 0.03))
            .body("shrink.byCause.broken.value.toDouble()", closeTo(0.5, GAL))
            .body("shrink.byCause.unexplained.value.toDouble()", closeTo(1.06, GAL))
            .body("shrink.withoutBroken.volumeAt68F.value.toDouble()", closeTo(1.06, GAL))
            .body("shrink.withoutBroken.percent.toDouble()", closeTo(1.46, 0.03))
            .extract()
            .jsonPath();
    String lot = run.getString("lot");

    // The barrels are drained, the jars stand in the cool room, the heel in its vessel.
    reads("/api/barrels/" + half).body("state", equalTo("drained"));
    reads("/api/vessels/" + heel)
        .body("lot", equalTo(lot))
        .body("netWeight.value.toDouble()", closeTo(19.4, 0.01));
    reads("/api/stock?lot=" + lot + "&container=PT")
        .body("items.onHand", contains(160))
        .body("items.place", contains("cool-room"))
        .body("items.grade", contains("amber"));

    // The next run draws the heel, and the trace follows it back to last year's barrel.
    String fresh = newTag("E");
    posts("/api/barrels", barrel(fresh, 2024, "2024-03-28", 250, 42, 67.0, 60)).statusCode(201);
    String next =
        posts(
                "/api/canning/runs",
                """
                {'on': '2024-07-02', 'draws': [{'barrel': '%s', 'all': true}, {'vessel': '%s', 'all': true}],
                 'fillTemperature': {'value': 186, 'unit': 'degF'},
                 'fills': [{'container': 'PT', 'count': 160}],
                 'transmittance': 59, 'taste': 'clean'}
                """
                    .formatted(fresh, heel))
            .statusCode(201)
            .extract()
            .path("lot");
    JsonPath trace = reads("/api/lots/" + next + "/trace").extract().jsonPath();
    String lastYearsLot = reads("/api/barrels/" + lastYears).extract().path("lot");
    assertTrue(trace.getList("ancestors.lot").contains(lastYearsLot));
    double heelShare = 19.4 / (208.0 + 19.4);
    assertEquals(
        heelShare * 130.0 / 801.0,
        trace.getDouble("ancestors.find { it.lot == '" + lastYearsLot + "' }.share"),
        1e-4);
    reads("/api/lots/" + lastYearsLot + "/trace")
        .body("descendants.lot", containsInAnyOrder(lot, next))
        .body("whereabouts.find { it.lot == '" + next + "' }.count", equalTo(160))
        .body("accounted", equalTo(8 + 12 + 60 + 160 + 320 + 160))
        .body("total", equalTo(8 + 12 + 60 + 160 + 320 + 160));
    reads("/api/lots/" + next + "/trace").body("parents.seasons.flatten()", hasItem(2023));

    invariants.check().forEach(f -> assertTrue(f.violations().isEmpty(), f.toString()));
  }

  private static JsonPath fills(String barrel, double gallons, boolean gapFlagged) {
    return posts("/api/barrels", barrel)
        .statusCode(201)
        .body("volumeAt68F.value.toDouble()", closeTo(gallons, GAL))
        .body("dipstickGap.beyondUncertainty", equalTo(gapFlagged))
        .extract()
        .jsonPath();
  }

  private static String dipped(double gallons, double fahrenheit) {
    return "'dipstick': {'volume': {'value': %s, 'unit': 'gal'}, 'temperature': {'value': %s, 'unit': 'degF'}},"
        .formatted(gallons, fahrenheit);
  }

  private static String with(String barrel, String field) {
    return barrel.replaceFirst("'material'", field + " 'material'");
  }
}
