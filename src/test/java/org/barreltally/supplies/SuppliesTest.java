package org.barreltally.supplies;

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
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Invariants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Supplies from the delivery to the run that uses them up, each test with a size of its own. */
@QuarkusTest
class SuppliesTest {

  @Inject Invariants invariants;
  @Inject EntityManager entities;

  private String size;
  private String caps;

  @BeforeEach
  void a_size_and_its_caps() {
    String own = UUID.randomUUID().toString().substring(0, 7).toUpperCase();
    size = "S" + own;
    caps = "CAP-" + own;
    posts(
            "/api/containers",
            "{'code': '%s', 'name': 'Jar', 'netContents': {'value': 1, 'unit': 'pt'}, 'material': 'glass'}"
                .formatted(size))
        .statusCode(201);
    posts(
            "/api/supplies",
            "{'code': '%s', 'name': 'Caps', 'kind': 'cap', 'container': '%s', 'lowLine': 50}"
                .formatted(caps, size))
        .statusCode(201)
        .header("Location", endsWith("/api/supplies/" + caps))
        .body("perJar", equalTo(1))
        .body("state", equalTo("not-counted-yet"))
        .body("onHand", nullValue());
  }

  @AfterEach
  void the_book_is_whole() {
    invariants.check().forEach(f -> assertTrue(f.violations().isEmpty(), f.toString()));
  }

  @Test
  void a_delivery_is_entered_once_however_often_it_is_sent() {
    UUID id = UUID.randomUUID();
    String delivery = "{'on': '2026-05-28', 'count': 200, 'note': 'Two bags'}";
    String first = posts(at("receipts"), delivery, id).statusCode(201).extract().asString();
    assertEquals(first, posts(at("receipts"), delivery, id).statusCode(201).extract().asString());
    posts(at("receipts"), delivery.replace("200", "300"), id)
        .statusCode(409)
        .body("code", equalTo("id-reused"));
    onHand(200).body("low", equalTo(false)).body("state", equalTo("counted"));
  }

  @Test
  void a_run_uses_up_good_and_broken_jars_and_gives_them_back_when_it_is_taken_back() {
    received("2026-05-28", 200);
    String lot =
        run("2026-06-20", 160, 3)
            .statusCode(201)
            .body("cautions", not(hasItem(containsString(caps))))
            .extract()
            .path("lot");
    onHand(37).body("low", equalTo(true));
    takeBack(lot);
    onHand(200);
    reads(at("movements")).body("items.kind", equalTo(List.of("receipt", "run", "taken-back")));
  }

  @Test
  void a_carton_begun_is_a_carton_used() {
    String cartons = caps.replace("CAP", "BOX");
    posts(
            "/api/supplies",
            "{'code': '%s', 'name': 'Cartons', 'kind': 'carton', 'container': '%s', 'jarsEach': 12}"
                .formatted(cartons, size))
        .statusCode(201)
        .body("perJar", nullValue());
    posts("/api/supplies/" + cartons + "/counts", "{'on': '2026-05-30', 'count': 20}")
        .statusCode(201);
    run("2026-06-20", 160, 3).statusCode(201);
    reads("/api/supplies/" + cartons).body("onHand", equalTo(6));
  }

  @Test
  void supplies_not_counted_yet_are_warned_about_and_left_alone() {
    run("2026-06-20", 20, 0)
        .statusCode(201)
        .body(
            "cautions",
            hasItem(containsString("(" + caps + "): not counted yet; the run uses 20")));
    reads("/api/supplies/" + caps).body("state", equalTo("not-counted-yet"));
  }

  @Test
  void too_few_are_warned_about_and_the_book_goes_below_zero_until_they_are_counted() {
    received("2026-05-28", 10);
    run("2026-06-20", 20, 1)
        .statusCode(201)
        .body("cautions", hasItem(containsString("the run uses 21 and the book has 10")));
    onHand(-11).body("state", equalTo("count-needed")).body("low", equalTo(true));
    posts(at("counts"), "{'on': '2026-06-21', 'count': 4}")
        .statusCode(201)
        .body("change", equalTo(15))
        .body("onHandAfter", equalTo(4));
  }

  @Test
  void too_few_are_refused_where_the_owner_wants_it_and_nothing_stays() {
    QuarkusMock.installMockForType(new ConfiguredSuppliesRule("refuse"), SuppliesRule.class);
    received("2026-05-28", 20);
    whatIf(21)
        .statusCode(200)
        .body("cautions", hasItem(containsString("uses 21 and the book has 20")));
    run("2026-06-20", 20, 1)
        .statusCode(409)
        .body("code", equalTo("supplies-short"))
        .body("errors[0].field", equalTo("fills[0]"))
        .body("detail", containsString(caps));
    onHand(20);
    reads("/api/stock?container=" + size).body("items.size()", equalTo(0));
    run("2026-06-20", 20, 0).statusCode(201);
    onHand(0);
  }

  @Test
  void what_is_not_counted_yet_is_never_refused() {
    QuarkusMock.installMockForType(new ConfiguredSuppliesRule("refuse"), SuppliesRule.class);
    run("2026-06-20", 20, 0).statusCode(201);
  }

  @Test
  void a_count_had_in_it_what_happened_on_earlier_days_and_is_entered_late() {
    received("2026-05-28", 100);
    posts(at("counts"), "{'on': '2026-06-21', 'count': 60}")
        .statusCode(201)
        .body("change", equalTo(-40));
    run("2026-06-20", 38, 0).statusCode(201);
    onHand(60);
    received("2026-06-19", 500);
    onHand(60);
    received("2026-06-22", 5);
    // what was counted on the 21st is compared with the book of that evening
    posts(at("counts"), "{'on': '2026-06-21', 'count': 58}")
        .statusCode(201)
        .body("change", equalTo(-2));
    onHand(63);
  }

  @Test
  void a_run_taken_back_after_a_count_leaves_what_was_counted() {
    received("2026-05-28", 100);
    String lot = run("2026-06-20", 30, 0).statusCode(201).extract().path("lot");
    posts(at("counts"), "{'on': '2026-06-22', 'count': 100}")
        .statusCode(201)
        .body("change", equalTo(30));
    takeBack(lot);
    onHand(100);
  }

  @ParameterizedTest(name = "{0} is refused naming {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{'code': 'cap', 'name': 'Caps', 'kind': 'cap'}|400|invalid-field|code",
        "{'name': 'Caps', 'kind': 'cap'}|400|invalid-field|code",
        "{'code': 'N1', 'name': ' ', 'kind': 'cap'}|400|invalid-field|name",
        "{'code': 'N1', 'name': 'Caps'}|400|invalid-field|kind",
        "{'code': 'N1', 'name': 'Caps', 'kind': 'lid'}|400|invalid-field|kind",
        "{'code': 'N1', 'name': 'Caps', 'kind': 'cap', 'perJar': 0}|400|invalid-field|perJar",
        "{'code': 'N1', 'name': 'Caps', 'kind': 'cap', 'perJar': 1.5}|400|wrong-type|perJar",
        "{'code': 'N1', 'name': 'Caps', 'kind': 'cap', 'jarsEach': 1}|400|invalid-field|jarsEach",
        "{'code': 'N1', 'name': 'Caps', 'kind': 'cap', 'perJar': 1, 'jarsEach': 12}|400|invalid-field|jarsEach",
        "{'code': 'N1', 'name': 'Caps', 'kind': 'cap', 'lowLine': -1}|400|invalid-field|lowLine",
        "{'code': 'N1', 'name': 'Caps', 'kind': 'cap', 'container': 'TUB'}|400|unknown-container|container",
        "{'code': '$CAPS', 'name': 'Caps', 'kind': 'cap'}|409|supply-exists|code"
      })
  void a_wrong_supply_is_refused(String body, int status, String code, String field) {
    posts("/api/supplies", body.replace("$CAPS", caps))
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
  }

  @ParameterizedTest(name = "{0} {1} is refused naming {4}")
  @CsvSource(
      delimiter = '|',
      value = {
        "receipts|{'on': '2026-05-28', 'count': 0}|400|invalid-field|count",
        "receipts|{'on': '2026-05-28', 'count': 10000001}|400|invalid-field|count",
        "receipts|{'on': '2026-05-28'}|400|invalid-field|count",
        "receipts|{'count': 5}|400|invalid-field|on",
        "receipts|{'on': '2126-05-28', 'count': 5}|400|in-the-future|on",
        "counts|{'on': '2026-05-28', 'count': -1}|400|invalid-field|count",
        "counts|{'on': '2026-05-28', 'count': 2.5}|400|wrong-type|count",
        "counts|{'on': '1826-05-28', 'count': 2}|400|invalid-field|on"
      })
  void a_wrong_receipt_or_count_is_refused(
      String path, String body, int status, String code, String field) {
    posts(at(path), body)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors.field", hasItem(field));
    reads("/api/supplies/" + caps).body("state", equalTo("not-counted-yet"));
  }

  @Test
  void a_supply_nobody_knows_is_not_found() {
    posts("/api/supplies/NOBODY/receipts", "{'on': '2026-05-28', 'count': 5}")
        .statusCode(404)
        .body("code", equalTo("unknown-supply"));
  }

  private String at(String path) {
    return "/api/supplies/" + caps + "/" + path;
  }

  private void received(String on, int count) {
    posts(at("receipts"), "{'on': '%s', 'count': %d}".formatted(on, count)).statusCode(201);
  }

  private ValidatableResponse onHand(int expected) {
    return reads("/api/supplies/" + caps).body("onHand", equalTo(expected));
  }

  private ValidatableResponse run(String on, int count, int broken) {
    return posts("/api/canning/runs", order(on, count, broken));
  }

  private ValidatableResponse whatIf(int count) {
    return posts("/api/canning/what-if", order("2026-06-20", count, 0));
  }

  private String order(String on, int count, int broken) {
    String tag = newTag("U");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    return """
        {'on': '%s', 'draws': [{'barrel': '%s', 'all': true}],
         'fillTemperature': {'value': 185, 'unit': 'degF'},
         'fills': [{'container': '%s', 'count': %d, 'broken': %d}],
         'transmittance': 57, 'taste': 'clean'}
        """
        .formatted(on, tag, size, count, broken);
  }

  private void takeBack(String lot) {
    posts("/api/movements/" + movementOf(lot) + "/reversal", "{'reason': 'Told twice'}")
        .statusCode(201);
  }

  @Transactional
  String movementOf(String lot) {
    return entities
        .createNativeQuery("SELECT movement FROM canning_runs WHERE lot = :lot")
        .setParameter("lot", lot)
        .getSingleResult()
        .toString();
  }
}
