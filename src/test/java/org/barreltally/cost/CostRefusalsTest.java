package org.barreltally.cost;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.BookRows;
import org.junit.jupiter.api.Test;

/** Every refusal of costs names its rule and field, and leaves every table as it was. */
@QuarkusTest
class CostRefusalsTest {

  private static final String GOOD =
      "{'on': '2024-04-20', 'kind': 'fuel', 'season': 2024, 'amount': {'amount': 10.00, 'currency': 'USD'}}";

  @Inject BookRows rows;

  /** What is changed in a good cost, and which code and field the refusal names. */
  private static final String[][] BAD = {
    {"'kind': 'fuel'", "'kind': 'diesel'", "invalid-field", "kind"},
    {"'kind': 'fuel', ", "", "invalid-field", "kind"},
    {"'season': 2024", "'note': 'for nobody'", "invalid-field", "season"},
    {"'season': 2024", "'season': 2024, 'container': 'PT'", "invalid-field", "season"},
    {"'season': 2024", "'season': 24", "invalid-field", "season"},
    {"'season': 2024", "'lot': 'NOSUCH-1'", "unknown-lot", "lot"},
    {"'season': 2024", "'run': 'NOSUCH-1'", "unknown-bearer", "run"},
    {"'fuel', 'season': 2024", "'jar', 'container': 'NOSUCH'", "unknown-container", "container"},
    {"'fuel', 'season': 2024", "'cap', 'supply': 'NOSUCH'", "unknown-bearer", "supply"},
    {"'season': 2024", "'show': '017f22e2-79b0-7cc3-98c4-dc0c0c07398f'", "unknown-show", "show"},
    {"'season': 2024", "'container': 'PT'", "invalid-field", "kind"},
    {"'season': 2024", "'season': 2024, 'per': 10", "invalid-field", "per"},
    {"'fuel', 'season': 2024", "'jar', 'container': 'PT', 'per': 0", "invalid-field", "per"},
    {"10.00", "0", "invalid-field", "amount"},
    {"10.00", "-5", "invalid-field", "amount"},
    {"10.00", "1.005", "invalid-field", "amount"},
    {"'USD'", "'EUR'", "currency-mismatch", "amount"},
    {"'season': 2024", "'season': 2024, 'hours': 2", "invalid-field", "amount"},
    {"'amount': {'amount': 10.00, 'currency': 'USD'}", "'hours': 2", "invalid-field", "rate"},
    {
      "'amount': {'amount': 10.00, 'currency': 'USD'}",
      "'rate': {'amount': 10.00, 'currency': 'USD'}",
      "invalid-field",
      "hours"
    },
    {
      "'amount': {'amount': 10.00, 'currency': 'USD'}",
      "'hours': 0.333, 'rate': {'amount': 10.00, 'currency': 'USD'}",
      "invalid-field",
      "hours"
    },
    {"2024-04-20", "2999-01-01", "in-the-future", "on"},
    {"'on': '2024-04-20', ", "", "invalid-field", "on"},
    {
      "'season': 2024", "'season': 2024, 'note': '" + "x".repeat(501) + "'", "invalid-field", "note"
    },
  };

  @Test
  void a_bad_cost_is_refused_by_name_and_leaves_no_trace() {
    List<String> wrong = new ArrayList<>();
    for (String[] bad : BAD) {
      var before = rows.fingerprint();
      String body = GOOD.replace(bad[0], bad[1]);
      var answer = posts("/api/costs", body).extract();
      String code = answer.path("code");
      List<String> fields = answer.path("errors.field");
      if (!bad[2].equals(code)
          || fields == null
          || fields.stream().noneMatch(f -> f.startsWith(bad[3]))) {
        wrong.add(body + " -> " + answer.statusCode() + " " + code + " " + fields);
      }
      assertEquals(before, rows.fingerprint(), body);
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void a_lot_made_of_others_has_no_cost_of_its_own() {
    String tag = newTag("K");
    posts("/api/barrels", barrel(tag, 2024, "2024-03-14", 250, 42, 66.9, 62)).statusCode(201);
    String lot =
        posts(
                "/api/canning/runs",
                "{'on': '2024-06-20', 'draws': [{'barrel': '%s', 'all': true}], 'fillTemperature': {'value': 186, 'unit': 'degF'}, 'fills': [{'container': 'PT', 'count': 100}], 'transmittance': 59, 'taste': 'clean'}"
                    .formatted(tag))
            .statusCode(201)
            .extract()
            .path("lot");
    refused(
        "/api/costs",
        GOOD.replace("'season': 2024", "'lot': '" + lot + "'"),
        422,
        "lot-made-here",
        "lot");
  }

  @Test
  void a_cost_is_taken_back_once_however_many_try_at_once() throws Exception {
    String id = posts("/api/costs", GOOD).statusCode(201).extract().path("id");
    String path = "/api/costs/" + id + "/reversal";
    refused(path, "{}", 400, "invalid-field", "reason");
    refused(path, "{'reason': '  '}", 400, "invalid-field", "reason");
    refused(
        "/api/costs/" + UUID.randomUUID() + "/reversal",
        "{'reason': 'Slip'}",
        404,
        "unknown-cost",
        null);
    ExecutorService people = Executors.newFixedThreadPool(6);
    try {
      List<Future<Integer>> tries = new ArrayList<>();
      for (int n = 0; n < 6; n++) {
        tries.add(people.submit(() -> posts(path, "{'reason': 'Slip'}").extract().statusCode()));
      }
      List<Integer> answers = new ArrayList<>();
      for (Future<Integer> each : tries) {
        answers.add(each.get());
      }
      answers.sort(null);
      assertEquals(List.of(201, 409, 409, 409, 409, 409), answers);
    } finally {
      people.shutdownNow();
    }
    assertEquals(1, rows.number("SELECT count(*) FROM cost_reversals WHERE cost = '" + id + "'"));
    refused(path, "{'reason': 'Again'}", 409, "cost-taken-back", null);
  }

  @Test
  void a_repeat_enters_nothing_twice() {
    UUID key = UUID.randomUUID();
    String id = posts("/api/costs", GOOD, key).statusCode(201).extract().path("id");
    long before = rows.number("SELECT count(*) FROM costs");
    posts("/api/costs", GOOD, key).statusCode(201).body("id", equalTo(id));
    assertEquals(before, rows.number("SELECT count(*) FROM costs"));
    asks()
        .contentType("application/json")
        .body(GOOD.replace('\'', '"'))
        .post("/api/costs")
        .then()
        .statusCode(400)
        .body("code", equalTo("id-missing"));
  }

  @Test
  void a_method_wants_year_and_method() {
    refused("/api/cost-method", "{'method': 'moving-average'}", 400, "invalid-field", "year");
    refused(
        "/api/cost-method",
        "{'year': 26, 'method': 'moving-average'}",
        400,
        "invalid-field",
        "year");
    refused("/api/cost-method", "{'year': 2024}", 400, "invalid-field", "method");
    refused(
        "/api/cost-method",
        "{'year': 2024, 'method': 'last-in-first-out'}",
        400,
        "invalid-field",
        "method");
  }

  @Test
  void bad_questions_name_their_parameter() {
    String[][] bad = {
      {"/api/costs?year=twenty", "year"},
      {"/api/costs?limit=0", "limit"},
      {"/api/costs?after=x", "after"},
      {"/api/cost-of-goods", "year"},
      {"/api/cost-of-goods?year=99999999999", "year"},
      {"/api/cost-of-goods?year=2024&method=lifo", "method"},
      {"/api/margins?year=2024", "by"},
      {"/api/margins?year=2024&by=moon", "by"},
      {"/api/margins?by=show", "year"},
      {"/api/stock-value?on=yesterday", "on"},
      {"/api/stock-value?on=2024-13-01", "on"},
      {"/api/stock-value?method=x", "method"},
    };
    for (String[] each : bad) {
      asks()
          .get(each[0])
          .then()
          .statusCode(400)
          .body("code", equalTo("invalid-field"))
          .body("errors.field", hasItem(each[1]));
    }
    asks().get("/api/stock-value?on=2998-01-01").then().body("code", equalTo("in-the-future"));
    asks()
        .get("/api/costs/" + UUID.randomUUID())
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-cost"));
    asks().get("/api/costs/nothing").then().statusCode(404);
  }

  private void refused(String path, String body, int status, String code, String field) {
    var before = rows.fingerprint();
    var answer = posts(path, body).statusCode(status).body("code", equalTo(code));
    if (field != null) {
      answer.body("errors.field", hasItem(field));
    }
    assertEquals(before, rows.fingerprint());
  }
}
