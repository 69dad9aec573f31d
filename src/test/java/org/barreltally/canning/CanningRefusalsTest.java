package org.barreltally.canning;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.Owner;
import org.barreltally.ledger.Invariants;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every way in which a canning run is refused: what is said, which field, and that nothing stays.
 */
@QuarkusTest
class CanningRefusalsTest {

  private static final String RIGHT =
      """
      {'on': '2026-06-20', 'draws': [{'barrel': '$B', 'all': true}],
       'fillTemperature': {'value': 185, 'unit': 'degF'},
       'fills': [{'container': 'PT', 'count': 300}], 'transmittance': 57, 'taste': 'clean'}
      """;

  @Inject EntityManager entities;
  @Inject Invariants invariants;

  private String tag;

  @BeforeEach
  void a_full_barrel() {
    tag = newTag("R");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
  }

  static Stream<Arguments> wrong() {
    return Stream.of(
        wrong(
            "'$B', 'all': true", "'nobody', 'all': true", 400, "unknown-barrel", "draws[0].barrel"),
        wrong(
            "'all': true",
            "'all': true, 'weight': {'value': 2, 'unit': 'lb'}",
            400,
            "invalid-field",
            "draws[0].weight"),
        wrong(
            "'all': true",
            "'weight': {'value': 470, 'unit': 'lb'}",
            409,
            "more-than-it-holds",
            "draws[0].weight"),
        wrong(
            "'all': true",
            "'weight': {'value': 0, 'unit': 'lb'}",
            400,
            "invalid-field",
            "draws[0].weight"),
        wrong(
            "'all': true",
            "'weight': {'value': 3, 'unit': 'gal'}",
            400,
            "invalid-field",
            "draws[0].weight.unit"),
        wrong(
            "'all': true",
            "'weight': {'value': 3, 'unit': 'stone'}",
            400,
            "unknown-unit",
            "draws[0].weight.unit"),
        wrong("[{'barrel': '$B', 'all': true}]", "[]", 400, "invalid-field", "draws"),
        wrong(
            "[{'barrel': '$B', 'all': true}]",
            "[{'barrel': '$B', 'all': true}, {'barrel': '$B', 'all': true}]",
            400,
            "invalid-field",
            "draws[1].barrel"),
        wrong(
            "'container': 'PT'",
            "'container': 'BUCKET'",
            400,
            "unknown-container",
            "fills[0].container"),
        wrong("'count': 300", "'count': 30000", 422, "not-enough-syrup", "fills"),
        wrong("'count': 300", "'count': -1", 400, "invalid-field", "fills[0].count"),
        wrong(
            "'count': 300", "'count': 300, 'broken': -2", 400, "invalid-field", "fills[0].broken"),
        wrong("'count': 300", "'rest': true", 400, "invalid-field", "fills"),
        wrong("'count': 300", "'count': 3.5", 400, "wrong-type", "fills[0].count"),
        wrong("'count': 300", "'count': '300'", 400, "wrong-type", "fills[0].count"),
        wrong("[{'container': 'PT', 'count': 300}]", "[]", 400, "invalid-field", "fills"),
        wrong("'value': 185", "'value': 170", 422, "below-capping-temperature", "fillTemperature"),
        wrong("'value': 185", "'value': 300", 400, "invalid-field", "fillTemperature"),
        wrong(
            "'fillTemperature': {'value': 185, 'unit': 'degF'},",
            "",
            400,
            "invalid-field",
            "fillTemperature"),
        wrong("'on'", "'targetBrix': 68.5, 'on'", 422, "blend-too-light", "targetBrix"),
        wrong("'on'", "'targetBrix': 60, 'on'", 422, "density-off-limits", "draws"),
        wrong("'on'", "'targetBrix': 6, 'on'", 400, "invalid-field", "targetBrix"),
        wrong("'2026-06-20'", "'2126-06-20'", 400, "in-the-future", "on"),
        wrong("'2026-06-20'", "'2026-03-01'", 400, "invalid-field", "on"),
        wrong("'transmittance': 57", "'transmittance': 157", 400, "invalid-field", "transmittance"),
        wrong("'transmittance': 57, ", "", 400, "invalid-field", "transmittance"),
        wrong(", 'taste': 'clean'", "", 400, "invalid-field", "taste"),
        wrong(
            "'taste': 'clean'",
            "'taste': 'buddy'",
            422,
            "processing-grade-too-small",
            "fills[0].container"),
        wrong(
            "'on'",
            "'heel': {'weight': {'value': 3, 'unit': 'lb'}}, 'on'",
            400,
            "invalid-field",
            "heel"),
        wrong(
            "'on'",
            "'heel': {'weight': {'value': 3, 'unit': 'lb'}, 'keptIn': '$B'}, 'on'",
            400,
            "invalid-field",
            "heel.keptIn"),
        wrong("'on'", "'speed': 3, 'on'", 400, "unknown-field", "speed"),
        wrong("'count': 300", "'count': 99999999999999999999", 400, null, "fills[0].count"));
  }

  private static Arguments wrong(
      String part, String instead, int status, String code, String field) {
    return Arguments.of(part, instead, status, code, field);
  }

  @ParameterizedTest(name = "{1} is refused as {3}")
  @MethodSource("wrong")
  void a_wrong_run_is_refused_and_nothing_stays(
      String part, String instead, int status, String code, String field) {
    String body = RIGHT.replace(part, instead).replace("$B", tag);
    Map<String, Long> before = rows();
    ValidatableResponse answer =
        posts("/api/canning/runs", body)
            .statusCode(status)
            .contentType("application/problem+json")
            .body("errors.field", hasItem(field))
            .body("detail", not(is("")));
    if (code != null) {
      answer.body("code", equalTo(code));
    }
    assertEquals(before, rows());
    reads("/api/barrels/" + tag).body("state", equalTo("full"));
  }

  @Test
  void the_right_run_is_taken_with_the_same_request() {
    posts("/api/canning/runs", RIGHT.replace("$B", tag)).statusCode(201);
  }

  @Test
  void a_cool_run_is_stored_once_somebody_says_why() {
    posts(
            "/api/canning/runs",
            RIGHT
                .replace("$B", tag)
                .replace("'value': 185", "'value': 172")
                .replace("'on'", "'releaseReason': 'Reheated in the jars, 185 at the core', 'on'"))
        .statusCode(201)
        .body("releaseReason", containsString("Reheated"))
        .body("cautions.join(' ')", containsString("172 degF"));
  }

  @Test
  void processing_grade_goes_into_five_gallons_but_not_into_a_pint() {
    String big = "P" + UUID.randomUUID().toString().substring(0, 6).toUpperCase();
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Five-gallon pail', 'netContents': {'value': 5, 'unit': 'gal'}, 'material': 'plastic'}"
                .formatted(big))
        .statusCode(201);
    String run = RIGHT.replace("$B", tag).replace("'taste': 'clean'", "'taste': 'buddy'");
    posts(
            "/api/canning/runs",
            run.replace(
                "'container': 'PT', 'count': 300", "'container': '%s', 'count': 8".formatted(big)))
        .statusCode(201)
        .body("grade", equalTo("processing"));
  }

  @Test
  void a_held_barrel_is_not_drawn() {
    posts("/api/barrels/" + tag + "/hold", "{'reason': 'Bung leaks'}").statusCode(200);
    posts("/api/canning/runs", RIGHT.replace("$B", tag))
        .statusCode(409)
        .body("code", equalTo("lot-held"))
        .body("errors.field", hasItem("draws[0].barrel"));
  }

  @Test
  void a_draw_above_the_book_by_no_more_than_the_scale_may_be_off_takes_all() {
    posts(
            "/api/canning/runs",
            RIGHT
                .replace("$B", tag)
                .replace("'all': true", "'weight': {'value': 445.0, 'unit': 'lb'}"))
        .statusCode(201)
        .body("blend.weight.value.toDouble()", equalTo(444.5));
    reads("/api/barrels/" + tag).body("state", equalTo("drained"));
  }

  @Test
  void a_run_taken_back_fills_the_barrel_again() {
    String lot =
        posts("/api/canning/runs", RIGHT.replace("$B", tag)).statusCode(201).extract().path("lot");
    String movement = movementOf(lot);
    Owner.posts("/api/movements/" + movement + "/reversal", "{'reason': 'Told twice'}")
        .statusCode(201);
    reads("/api/barrels/" + tag).body("state", equalTo("full"));
    reads("/api/stock?lot=" + lot).body("items.size()", equalTo(0));
    Owner.posts("/api/movements/" + movement + "/reversal", "{'reason': 'Again'}")
        .statusCode(409)
        .body("code", equalTo("cannot-be-taken-back"));
    invariants.check().forEach(f -> assertTrue(f.violations().isEmpty(), f.toString()));
  }

  @Transactional
  String movementOf(String lot) {
    return entities
        .createNativeQuery("SELECT movement FROM canning_runs WHERE lot = :lot")
        .setParameter("lot", lot)
        .getSingleResult()
        .toString();
  }

  /** How many rows every table has that a run writes. */
  @Transactional
  Map<String, Long> rows() {
    return List.of(
            "movements",
            "entries",
            "lots",
            "lot_parents",
            "lot_gradings",
            "items",
            "balances",
            "canning_runs",
            "vessels",
            "fillings",
            "requests",
            "lot_numbers")
        .stream()
        .collect(
            java.util.stream.Collectors.toMap(
                table -> table,
                table ->
                    ((Number)
                            entities
                                .createNativeQuery("SELECT count(*) FROM " + table)
                                .getSingleResult())
                        .longValue()));
  }
}
