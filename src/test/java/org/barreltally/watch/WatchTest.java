package org.barreltally.watch;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.Invariants;
import org.barreltally.ledger.Reservations;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Person;
import org.barreltally.people.Role;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The watch list over the real book: each kind of reason comes up, and goes when it is seen to. */
@QuarkusTest
class WatchTest {

  @Inject Invariants invariants;
  @Inject EntityManager entities;
  @Inject Reservations reservations;
  @Inject Clock clock;
  @Inject CurrentUser user;

  @AfterEach
  void the_book_is_whole() {
    invariants.check().forEach(f -> assertTrue(f.violations().isEmpty(), f.toString()));
  }

  @Test
  void an_old_barrel_is_listed_until_its_colour_is_read_again() {
    String tag = filled(daysAgo(91), 62, "plastic");
    Map<String, Object> item = only(tag);
    assertEquals("barrel-by-age", item.get("kind"));
    assertEquals(91, item.get("days"));
    assertTrue(item.get("note").toString().contains("plastic"), item.toString());
    posts(
            "/api/barrels/" + tag + "/regrade",
            "{'on': '%s', 'transmittance': 61, 'taste': 'clean'}".formatted(daysAgo(0)))
        .statusCode(200);
    assertEquals(List.of(), about(tag));
    String fresh = filled(daysAgo(90), 62, "stainless");
    assertEquals(List.of(), about(fresh));
  }

  @Test
  void a_reading_near_a_line_is_listed() {
    Map<String, Object> item = only(filled(daysAgo(1), 52, "stainless"));
    assertEquals("near-grade-line", item.get("kind"));
    assertTrue(
        item.get("reason").toString().contains("read at 52 %Tc, within 4 points of the line at 50"),
        item.toString());
  }

  @Test
  void old_jars_in_plastic_are_listed_with_what_is_known_of_plastic_until_they_are_gone() {
    String lot = packed(daysAgo(120), "PT", 300);
    Map<String, Object> item = only(lot);
    assertEquals("jars-by-age", item.get("kind"));
    assertTrue(item.get("note").toString().contains("plastic (PT)"), item.toString());
    posts(
            "/api/stock/write-offs",
            "{'place': 'cool-room', 'container': 'PT', 'lot': '%s', 'count': 300, 'cause': 'discarded', 'reason': 'Mould'}"
                .formatted(lot))
        .statusCode(201);
    assertEquals(List.of(), about(lot));
  }

  @Test
  void a_lot_held_for_long_is_listed_counted_from_the_hold_that_stands() {
    String tag = filled(daysAgo(1), 62, "stainless");
    String lot = reads("/api/barrels/" + tag).extract().path("lot");
    heldBefore(lot, 60, 50);
    posts("/api/barrels/" + tag + "/hold", "{'reason': 'Bung leaks'}").statusCode(200);
    assertEquals(List.of(), about(tag));
    heldBefore(lot, 40, -1);
    Map<String, Object> item = only(tag);
    assertEquals("held-long", item.get("kind"));
    assertEquals(40, item.get("days"));
  }

  @Test
  void promises_that_a_hold_undercuts_are_listed() {
    String size = newSize();
    String lot = packed(daysAgo(1), size, 40);
    user.actAs(new Person(UUID.randomUUID(), "tester", "Tester", Role.OWNER));
    reservations.reserve(List.of(new Reservations.Line(size, "amber", 30)));
    assertEquals(List.of(), about(size + " amber"));
    posts("/api/lots/" + lot + "/hold", "{'reason': 'Label smudged'}").statusCode(200);
    Map<String, Object> item = only(size + " amber");
    assertEquals("pool-below-zero", item.get("kind"));
    assertTrue(item.get("reason").toString().contains("30 short"), item.toString());
  }

  @Test
  void supplies_at_their_low_line_are_listed() {
    String code = "LBL-" + UUID.randomUUID().toString().substring(0, 6).toUpperCase();
    posts(
            "/api/supplies",
            "{'code': '%s', 'name': 'Labels', 'kind': 'label', 'lowLine': 50}".formatted(code))
        .statusCode(201);
    assertEquals(List.of(), about(code));
    posts("/api/supplies/" + code + "/counts", "{'on': '%s', 'count': 51}".formatted(daysAgo(1)))
        .statusCode(201);
    assertEquals(List.of(), about(code));
    posts("/api/supplies/" + code + "/counts", "{'on': '%s', 'count': 50}".formatted(daysAgo(0)))
        .statusCode(201);
    assertEquals("supply-low", only(code).get("kind"));
  }

  @Test
  void a_storeroom_over_the_line_in_the_last_week_is_listed_by_its_hottest_reading() {
    temperature("cool-room", Duration.ofDays(9), 99, "degF").statusCode(201);
    temperature("cool-room", Duration.ofHours(30), 80, "degF").statusCode(201);
    temperature("barrel-room", Duration.ofHours(30), 26, "degC").statusCode(201);
    assertEquals(List.of(), about("cool-room"));
    assertEquals(List.of(), about("barrel-room"));
    temperature("cool-room", Duration.ofHours(20), 80.5, "degF").statusCode(201);
    temperature("cool-room", Duration.ofHours(2), 70, "degF").statusCode(201);
    Map<String, Object> item = only("cool-room");
    assertEquals("storeroom-warm", item.get("kind"));
    assertTrue(item.get("reason").toString().contains("80.5 degF"), item.toString());
    reads("/api/storerooms/cool-room/temperatures?limit=2")
        .body("items.temperature.value", equalTo(List.of(70, 80.5f)))
        .body("items[0].place", equalTo("cool-room"));
  }

  @ParameterizedTest(name = "{0} {1} is refused naming {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{'temperature': {'value': 70, 'unit': 'degF'}}|400|invalid-field|at",
        "{'at': '2126-01-01T00:00:00Z', 'temperature': {'value': 70, 'unit': 'degF'}}|400|in-the-future|at",
        "{'at': '2026-01-01', 'temperature': {'value': 70, 'unit': 'degF'}}|400|invalid-field|at",
        "{'at': '2026-01-01T00:00:00Z'}|400|invalid-field|temperature",
        "{'at': '2026-01-01T00:00:00Z', 'temperature': {'value': 70, 'unit': 'lb'}}|400|invalid-field|temperature.unit",
        "{'at': '2026-01-01T00:00:00Z', 'temperature': {'value': 177, 'unit': 'degF'}}|400|invalid-field|temperature",
        "{'at': '2026-01-01T00:00:00Z', 'temperature': {'value': 20.00001, 'unit': 'degC'}}|400|invalid-field|temperature.value"
      })
  void a_wrong_temperature_is_refused(String body, int status, String code, String field) {
    posts("/api/storerooms/cool-room/temperatures", body)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
  }

  @Test
  void a_place_where_nothing_is_stored_has_no_temperature() {
    posts(
            "/api/storerooms/customer/temperatures",
            "{'at': '2026-01-01T00:00:00Z', 'temperature': {'value': 70, 'unit': 'degF'}}")
        .statusCode(404)
        .body("code", equalTo("unknown-storeroom"));
  }

  private ValidatableResponse temperature(String place, Duration ago, double value, String unit) {
    Instant at = clock.instant().minus(ago).truncatedTo(ChronoUnit.SECONDS);
    return posts(
        "/api/storerooms/" + place + "/temperatures",
        "{'at': '%s', 'temperature': {'value': %s, 'unit': '%s'}}".formatted(at, value, unit));
  }

  private LocalDate daysAgo(int days) {
    return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).minusDays(days);
  }

  private String filled(LocalDate on, double transmittance, String material) {
    String tag = newTag("W");
    posts(
            "/api/barrels",
            barrel(tag, on.getYear(), on.toString(), 486.5, 42.0, 66.9, transmittance)
                .replace("stainless", material))
        .statusCode(201);
    return tag;
  }

  private String newSize() {
    String size = "W" + UUID.randomUUID().toString().substring(0, 7).toUpperCase();
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Jar', 'netContents': {'value': 1, 'unit': 'pt'}, 'material': 'glass'}"
                .formatted(size))
        .statusCode(201);
    return size;
  }

  private String packed(LocalDate on, String size, int count) {
    return posts(
            "/api/canning/runs",
            """
            {'on': '%s', 'draws': [{'barrel': '%s', 'all': true}],
             'fillTemperature': {'value': 185, 'unit': 'degF'},
             'fills': [{'container': '%s', 'count': %d}], 'transmittance': 62, 'taste': 'clean'}
            """
                .formatted(on, filled(on, 62, "stainless"), size, count))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  /** A hold of so many days ago, and its release where {@code released} is not below zero. */
  @Transactional
  void heldBefore(String lot, int held, int released) {
    step(lot, "held", held);
    if (released >= 0) {
      step(lot, "released", released);
    }
  }

  private void step(String lot, String step, int daysAgo) {
    entities
        .createNativeQuery(
            "INSERT INTO lot_holds (id, lot, step, reason, recorded_at, recorded_by)"
                + " SELECT gen_random_uuid(), :lot, :step, 'Earlier', :at, id FROM users LIMIT 1")
        .setParameter("lot", lot)
        .setParameter("step", step)
        .setParameter("at", clock.instant().minus(Duration.ofDays(daysAgo)))
        .executeUpdate();
  }

  private Map<String, Object> only(String about) {
    List<Map<String, Object>> found = about(about);
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  /** Reads the whole list, part by part. */
  private List<Map<String, Object>> about(String about) {
    List<Map<String, Object>> found = new ArrayList<>();
    String next = "";
    while (next != null) {
      JsonPath part = reads("/api/watch?limit=500" + next).extract().jsonPath();
      List<Map<String, Object>> items = part.getList("items");
      items.stream().filter(item -> about.equals(item.get("about"))).forEach(found::add);
      next = part.getString("next") == null ? null : "&after=" + part.getString("next");
    }
    return found;
  }
}
