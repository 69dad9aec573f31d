package org.barreltally.barrels;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.barrels.Asked.filled;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** A vessel that keeps heels links what was in it to what comes next, until it is washed. */
@QuarkusTest
class WashingTest {

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  @Test
  void a_heel_that_is_drawn_is_a_parent_by_its_weight() {
    String vessel = newTag("H");
    String first = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    String second = run(both(filled(), vessel), null);
    reads("/api/lots/" + second + "/trace")
        .body(
            "parents.find { it.lot == '" + first + "' }.weight.value.toDouble()", closeTo(20, 0.01))
        // 20 lb of 246.5
        .body(
            "parents.find { it.lot == '" + first + "' }.share.toDouble()", closeTo(0.081136, 2e-4));
  }

  @Test
  void an_empty_vessel_that_was_not_washed_links_without_weight() {
    String vessel = newTag("H");
    String first = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    run(both(filled(), vessel), null);
    reads("/api/vessels/" + vessel).body("state", equalTo("drained")).body("lot", equalTo(first));
    String third = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    reads("/api/lots/" + third + "/trace")
        .body("parents.lot", hasItem(first))
        .body("parents.find { it.lot == '" + first + "' }.weight.value.toDouble()", closeTo(0, 0))
        .body("ancestors.find { it.lot == '" + first + "' }.share.toDouble()", closeTo(0, 0));
  }

  @Test
  void a_washed_vessel_ends_the_link() {
    String vessel = newTag("H");
    String first = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    run(both(filled(), vessel), null);
    wash(vessel, "{'on': '2024-07-01'}").statusCode(201).body("state", equalTo("drained"));
    String third = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    reads("/api/lots/" + third + "/trace").body("parents.lot", not(hasItem(first)));
    reads("/api/lots/" + first + "/trace").body("descendants.lot", not(hasItem(third)));
  }

  @Test
  void syrup_still_in_it_needs_a_reason_to_be_thrown_away() {
    String vessel = newTag("H");
    String first = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    wash(vessel, "{'on': '2024-07-01'}")
        .statusCode(409)
        .body("code", equalTo("barrel-not-empty"))
        .body("errors[0].field", equalTo("discard"));
    reads("/api/vessels/" + vessel).body("netWeight.value.toDouble()", closeTo(20, 0.01));
    wash(vessel, "{'on': '2024-07-01', 'discard': {'reason': 'A month old'}}")
        .statusCode(201)
        .body("state", equalTo("drained"));
    reads("/api/lots/" + first + "/trace").body("syrup.place", hasItem("discarded"));
    String next = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    reads("/api/lots/" + next + "/trace").body("parents.lot", not(hasItem(first)));
  }

  @Test
  void a_heel_on_a_heel_is_a_blend_of_both() {
    String vessel = newTag("H");
    String first = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    String second = run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    String blend =
        reads("/api/vessels/" + vessel)
            .body("netWeight.value.toDouble()", closeTo(40, 0.02))
            .extract()
            .path("lot");
    reads("/api/lots/" + blend + "/trace")
        .body("parents.lot", containsInAnyOrder(first, second))
        .body("parents.share.collect { it.toDouble() }.min()", closeTo(0.5, 1e-3))
        .body("parents.share.collect { it.toDouble() }.sum()", closeTo(1, 1e-6));
  }

  @Test
  void vessels_are_listed_apart_from_barrels() {
    String vessel = newTag("H");
    String barrel = filled();
    run("{'barrel': '%s', 'all': true}".formatted(filled()), vessel);
    reads("/api/vessels?limit=500")
        .body("items.tag", hasItem(vessel))
        .body("items.tag", not(hasItem(barrel)));
    reads("/api/barrels?limit=500&season=2024").body("items.tag", not(hasItem(vessel)));
    posts("/api/barrels", Asked.halfBarrel(vessel))
        .statusCode(400)
        .body("errors.field", contains("tag"));
  }

  private static String both(String barrel, String vessel) {
    return "{'barrel': '%s', 'all': true}, {'vessel': '%s', 'all': true}".formatted(barrel, vessel);
  }

  /** A run of pints; 20 lb of heel where a vessel is named. Gives its lot. */
  private static String run(String draws, String heel) {
    return posts(
            "/api/canning/runs",
            """
            {'on': '2024-06-20', 'draws': [%s], 'fillTemperature': {'value': 185, 'unit': 'degF'},
             'fills': [{'container': 'PT', 'count': 140}], %s
             'transmittance': 55, 'taste': 'clean'}
            """
                .formatted(
                    draws,
                    heel == null
                        ? ""
                        : "'heel': {'weight': {'value': 20, 'unit': 'lb'}, 'keptIn': '"
                            + heel
                            + "'},"))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  private static ValidatableResponse wash(String vessel, String body) {
    return posts("/api/vessels/" + vessel + "/washings", body);
  }
}
