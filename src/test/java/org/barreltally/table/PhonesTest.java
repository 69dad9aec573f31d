package org.barreltally.table;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Phones at show tables: paired once, held to what a table asks, cut off; and what they tell. */
@QuarkusTest
class PhonesTest {

  @Inject BookRows rows;
  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_sound() {
    SoundBook.check();
  }

  private static ValidatableResponse pair(String code) {
    return given()
        .contentType("application/json")
        .body(Map.of("code", code))
        .post("/api/table/pairing")
        .then();
  }

  private static String token() {
    return pair(TestTable.code("Phone " + UUID.randomUUID().toString().substring(0, 8)))
        .statusCode(201)
        .extract()
        .path("token");
  }

  @Test
  void a_code_pairs_one_phone_and_is_used_up() {
    String code = TestTable.code("Once");
    pair(code.toUpperCase().replace("-", " ")).statusCode(201).body("token", notNullValue());
    pair(code).statusCode(422).body("code", equalTo("pairing-gone"));
    pair("00000-00000-00000-00000").statusCode(422).body("code", equalTo("pairing-gone"));
    pair(" ").statusCode(400).body("errors[0].field", equalTo("code"));
  }

  @Test
  void an_old_code_pairs_nobody() {
    String code = TestTable.code("Late");
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM phone_pairings WHERE name = 'Late' AND used_at IS NULL"
                + " AND expires_at - made_at = interval '15 minutes'"));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM phone_pairings WHERE position('"
                + code.replace("-", "")
                + "' in phone_pairings::text) > 0"),
        "only its hash is kept");
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /api/barrels, 403",
    "GET, /api/leads, 403",
    "GET, /api/phones, 403",
    "GET, /api/tokens, 403",
    "POST, /api/tokens, 403",
    "POST, /api/shows, 403",
    "POST, /api/stock/write-offs, 403",
    "DELETE, /api/phones/01a0c0de-7000-7000-8000-000000000001, 403",
    "GET, /openapi, 403",
    "GET, /q/metrics, 403",
    "GET, /api/table/shows, 200",
    "GET, /api/table/shows/01a0c0de-7000-7000-8000-000000000001, 404",
    "GET, /api/table/../barrels, 403"
  })
  void a_phone_may_ask_what_a_table_asks_and_nothing_else(String method, String path, int status) {
    given()
        .urlEncodingEnabled(false)
        .header("Authorization", "Bearer " + token())
        .contentType("application/json")
        .body(method.equals("POST") ? "{}" : "")
        .request(method, path)
        .then()
        .statusCode(status);
  }

  @Test
  void a_phone_that_is_cut_off_asks_in_vain_and_stays_listed() {
    String code = TestTable.code("Gone");
    var paired = pair(code).statusCode(201).extract();
    String token = paired.path("token");
    given()
        .header("Authorization", "Bearer " + token)
        .get("/api/table/shows")
        .then()
        .statusCode(200);
    Owner.asks()
        .delete("/api/phones/" + paired.path("id"))
        .then()
        .statusCode(200)
        .body("cutOffAt", notNullValue());
    given()
        .header("Authorization", "Bearer " + token)
        .get("/api/table/shows")
        .then()
        .statusCode(401);
    Owner.asks().delete("/api/phones/" + paired.path("id")).then().statusCode(200);
    Owner.reads("/api/phones").body("items.id", hasItem(paired.<String>path("id")));
    Owner.asks()
        .delete("/api/phones/" + UUID.randomUUID())
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-phone"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {'container': 'PT', 'count': 0, 'cause': 'broken'}                     | 400 | count
          {'container': 'PT', 'count': 5001, 'cause': 'broken'}                  | 400 | count
          {'container': 'PT', 'count': 1}                                        | 400 | cause
          {'container': 'PT', 'count': 1, 'cause': 'eaten'}                      | 400 | cause
          {'container': 'PT', 'count': 1, 'cause': 'given'}                      | 400 | reason
          {'container': 'NONE', 'count': 1, 'cause': 'broken'}                   | 400 | container
          {'container': 'PT', 'count': 1, 'cause': 'broken', 'at': '2999-01-01T00:00:00Z'} | 400 | at
          """)
  void what_cannot_be_read_of_a_loss_leaves_no_trace(String said, int status, String field) {
    TestTable table = TestTable.open(shelf, 3);
    Map<String, String> before = rows.fingerprint();
    posts("/api/shows/" + table.id() + "/losses", said)
        .statusCode(status)
        .body("errors.field", hasItem(field));
    assertEquals(before, rows.fingerprint());
  }

  /**
   * 5 packed out; 2 broken of the only lot, 1 given of a lot nobody knows, 4 tasted beyond what is
   * there.
   */
  @Test
  void losses_are_taken_as_they_happened_and_taken_back_once() {
    TestTable table = TestTable.open(shelf, 5);
    String path = "/api/shows/" + table.id() + "/losses";
    String broken =
        posts(path, loss(table, 2, "'cause': 'broken'"))
            .statusCode(201)
            .body("lot", equalTo(table.lot()))
            .body("grade", equalTo("amber"))
            .extract()
            .path("id");
    assertEquals(3, table.onTable());
    posts(path, loss(table, 1, "'cause': 'given', 'reason': 'To the judges', 'lot': 'NOBODY-1'"))
        .statusCode(201)
        .body("lot", equalTo(null));
    posts(path, loss(table, 4, "'cause': 'sampled'")).statusCode(201);
    assertEquals(-2, table.onTable());

    posts(path + "/" + broken + "/reversal", "{'reason': 'It was not broken'}").statusCode(200);
    posts(path + "/" + broken + "/reversal", "{'reason': 'It was not broken'}").statusCode(200);
    assertEquals(0, table.onTable());
    Map<String, String> before = rows.fingerprint();
    posts(path + "/" + UUID.randomUUID() + "/reversal", "{'reason': 'No'}").statusCode(404);
    TestTable other = TestTable.open(shelf, 1);
    before = rows.fingerprint();
    posts("/api/shows/" + other.id() + "/losses/" + broken + "/reversal", "{'reason': 'No'}")
        .statusCode(404)
        .body("code", equalTo("unknown-loss"));
    assertEquals(before, rows.fingerprint());
  }

  private static String loss(TestTable table, int count, String rest) {
    return "{'container': '%s', 'count': %d, %s}".formatted(table.size(), count, rest);
  }

  @Test
  void a_wish_is_noted_once_and_forgotten_for_good() {
    TestTable table = TestTable.open(shelf, 1);
    String id = UUID.randomUUID().toString();
    String name = "Quillfeather " + id;
    String said =
        "{'id': '%s', 'at': '2026-10-03T14:05:00Z', 'name': '%s', 'phone': '555 0142'}"
            .formatted(id, name);
    String path = "/api/shows/" + table.id() + "/leads";
    posts(path, said).statusCode(201).body("id", equalTo(id)).body("name", equalTo(null));
    posts(path, said).statusCode(201);
    Owner.reads("/api/leads").body("items.name", hasItem(name));
    Owner.asks().delete("/api/leads/" + id).then().statusCode(204);
    posts(path, said).statusCode(201);
    Owner.reads("/api/leads").body("items.name", not(hasItem(name)));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM table_leads WHERE id = '" + id + "' AND name IS NOT NULL"));
    assertEquals(0, rows.number("SELECT count(*) FROM requests WHERE body LIKE '%" + name + "%'"));
    Owner.asks().delete("/api/leads/" + UUID.randomUUID()).then().statusCode(404);
    posts(path, "{'id': '%s', 'name': ' '}".formatted(id))
        .statusCode(400)
        .body("errors.field", equalTo(java.util.List.of("at", "name", "phone")));
  }

  @Test
  void a_price_given_by_hand_says_why() {
    TestTable table = TestTable.open(shelf, 3);
    String id = UUID.randomUUID().toString();
    posts(
            "/api/shows/" + table.id() + "/sales",
            "{'id': '%s', 'at': '2026-01-03T14:05:00Z', 'lines': [{'container': '%s', 'count': 1, 'price': {'amount': 12, 'currency': 'USD'}}], 'paid': {'cash': {'amount': 12, 'currency': 'USD'}}, 'reason': 'Dented lid'}"
                .formatted(id, table.size()))
        .statusCode(201)
        .body("notes.code", hasItem("price-reason"))
        .body("notes.detail", hasItem("Priced by hand: Dented lid"));
    String movement = Owner.reads("/api/sales/" + id).extract().path("movement");
    Owner.reads("/api/movements/" + movement).body("reason", equalTo("Dented lid"));
  }
}
