package org.barreltally.canning;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import org.barreltally.ledger.Invariants;
import org.junit.jupiter.api.Test;

/** Water that thins a blend, and what is left in a vessel for the next run. */
@QuarkusTest
class ThinningAndHeelsTest {

  @Inject Invariants invariants;

  @Test
  void water_thins_to_the_target_and_the_sugar_stays() {
    String tag = newTag("V");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 68.0, 62)).statusCode(201);
    // By hand: 444.5 lb at 68.0 hold as much sugar as 444.5 × 68.0 / 66.9 = 451.81 lb at 66.9.
    posts("/api/canning/what-if", run(tag, "'targetBrix': 66.9,", 300, ""))
        .statusCode(200)
        .body("brix.toDouble()", closeTo(66.9, 0.005))
        .body("blend.waterToAdd.value.toDouble()", closeTo(7.31, 0.02))
        .body("blend.weight.value.toDouble()", closeTo(451.81, 0.02));
  }

  @Test
  void the_causes_of_shrink_add_up_to_the_whole() {
    String tag = newTag("W");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    JsonPath shrink =
        posts(
                "/api/canning/runs",
                run(
                        tag,
                        "'filterHoldUp': {'value': 4, 'unit': 'lb'}, 'overfill': {'value': 2, 'unit': 'g'},",
                        300,
                        "")
                    .replace("'count': 300", "'count': 300, 'broken': 3"))
            .statusCode(201)
            .extract()
            .jsonPath();
    double sum =
        List.of("filter", "overfill", "broken", "unexplained").stream()
            .mapToDouble(cause -> shrink.getDouble("shrink.byCause." + cause + ".value"))
            .sum();
    assertEquals(shrink.getDouble("shrink.volumeAt68F.value"), sum, 0.003);
    // 300 jars of 2 g over are 600 g; a pint and its overfill broken three times, 630 g each, in
    // air.
    assertEquals(600 / 5024.0, shrink.getDouble("shrink.byCause.overfill.value"), 0.001);
    assertEquals(3 * 630 / 5024.0, shrink.getDouble("shrink.byCause.broken.value"), 0.001);
  }

  @Test
  void a_heel_poured_on_an_older_heel_becomes_a_blend_of_both() {
    String heel = newTag("H");
    String first = canned(newTag("X"), heel);
    String second = canned(newTag("Y"), heel);
    String blend =
        reads("/api/vessels/" + heel)
            .body("netWeight.value.toDouble()", closeTo(10, 0.02))
            .extract()
            .path("lot");
    reads("/api/lots/" + blend + "/trace")
        .body("parents.lot", containsInAnyOrder(first, second))
        .body("parents.share.collect { it.toDouble() }.sum().toDouble()", closeTo(1, 1e-6));
    invariants.check().forEach(f -> assertTrue(f.violations().isEmpty(), f.toString()));
  }

  @Test
  void an_emptied_vessel_links_its_last_lot_until_it_is_washed() {
    String heel = newTag("H");
    String first = canned(newTag("X"), heel);
    posts(
            "/api/barrels/" + heel + "/write-offs",
            "{'on': '2026-06-21', 'all': true, 'cause': 'discarded', 'reason': 'Cloudy'}")
        .statusCode(201);
    String unwashed = canned(newTag("Y"), heel);
    reads("/api/lots/" + unwashed + "/trace")
        .body("ancestors.find { it.lot == '" + first + "' }.share.toDouble()", equalTo(0.0));

    posts(
            "/api/vessels/" + heel + "/washings",
            "{'on': '2026-06-22', 'discard': {'reason': 'A cup left'}}")
        .statusCode(201);
    String own = newTag("Z");
    String washed = canned(own, heel);
    String barrelLot = reads("/api/barrels/" + own).extract().path("lot");
    reads("/api/lots/" + washed + "/trace").body("ancestors.lot", contains(barrelLot));
  }

  /** Cans a fresh barrel on the same day, keeping 5 lb in the vessel, and gives the lot. */
  private static String canned(String tag, String heel) {
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    return posts(
            "/api/canning/runs",
            run(
                tag,
                "",
                300,
                "'heel': {'weight': {'value': 5, 'unit': 'lb'}, 'keptIn': '" + heel + "'},"))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  private static String run(String tag, String more, int pints, String heel) {
    return """
        {'on': '2026-06-20', 'draws': [{'barrel': '%s', 'all': true}], %s %s
         'fillTemperature': {'value': 185, 'unit': 'degF'},
         'fills': [{'container': 'PT', 'count': %d}], 'transmittance': 57, 'taste': 'clean'}
        """
        .formatted(tag, more, heel, pints);
  }
}
