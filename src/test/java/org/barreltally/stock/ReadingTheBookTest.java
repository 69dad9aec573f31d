package org.barreltally.stock;

import static org.barreltally.stock.ShelfFixture.get;
import static org.barreltally.stock.ShelfFixture.post;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.ledger.Invariants;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class ReadingTheBookTest {

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void movements_are_listed_by_item_place_and_day() {
    String lot = shelf.lotWith(24, "PT");
    String given = writeOff(lot, 3);
    String item = get("/api/movements/" + given).extract().path("entries[0].item");

    get("/api/movements?item=" + item)
        .statusCode(200)
        .body("items", hasSize(2))
        .body("items[0].kind", equalTo("opening"))
        .body("items[1].id", equalTo(given))
        .body("items[1].entries.unit", everyItem(equalTo("piece")))
        .body("items[1].entries.balanceAfter", hasItem(21))
        .body("items[1].entries.lot", everyItem(equalTo(lot)))
        .body("items[1].reverses", nullValue());
    get("/api/movements?item=" + item + "&place=given").body("items.id", equalTo(list(given)));
    get("/api/movements?item=" + item + "&from=2024-06-20&to=2024-06-20")
        .body("items.kind", equalTo(list("opening")));
    get("/api/movements?item=" + item + "&from=2024-06-21").body("items.id", equalTo(list(given)));
    get("/api/movements?item=" + item + "&to=2024-06-19").body("items", hasSize(0));
  }

  @Test
  void movements_come_in_parts_in_the_order_they_were_recorded() {
    String lot = shelf.lotWith(24, "PT");
    String first = writeOff(lot, 1);
    String second = writeOff(lot, 2);
    String item = get("/api/movements/" + first).extract().path("entries[0].item");

    JsonPath part = get("/api/movements?limit=2&item=" + item).extract().jsonPath();
    assertEquals(first, part.getString("items[1].id"));
    get("/api/movements?limit=2&item=" + item + "&after=" + part.getString("next"))
        .body("items.id", equalTo(list(second)))
        .body("next", nullValue());
  }

  @ParameterizedTest
  @CsvSource({
    "item=7, item",
    "from=yesterday, from",
    "to=2024-02-30, to",
    "from=2024-06-20&to=2024-06-19, to",
    "limit=5000, limit",
    "after=%%%25, after"
  })
  void a_question_that_cannot_be_read_is_refused_by_name(String query, String field) {
    get("/api/movements?" + query).statusCode(400);
    if (!query.startsWith("after")) {
      get("/api/movements?" + query).body("errors[0].field", equalTo(field));
    }
  }

  @Test
  void a_movement_is_taken_back_once() {
    String lot = shelf.lotWith(24, "PT");
    String given = writeOff(lot, 3);
    UUID key = UUID.randomUUID();
    String path = "/api/movements/" + given + "/reversal";

    String first = post(path, "{\"reason\": \"Came back\"}", key).extract().asString();
    String again =
        post(path, "{\"reason\": \"Came back\"}", key)
            .statusCode(201)
            .body("kind", equalTo("reversal"))
            .body("reverses", equalTo(given))
            .body("reason", equalTo("Came back"))
            .extract()
            .asString();

    assertEquals(first, again);
    assertEquals(24, shelf.standing("cool-room", lot, "PT"));
    String reversal = JsonPath.from(first).getString("id");
    get("/api/movements/" + given).body("reversedBy", equalTo(reversal));
    post(path, "{\"reason\": \"Again\"}")
        .statusCode(409)
        .body("code", equalTo("cannot-be-taken-back"));
    post("/api/movements/" + reversal + "/reversal", "{\"reason\": \"Back again\"}")
        .statusCode(409)
        .body("code", equalTo("cannot-be-taken-back"));
  }

  @Test
  void a_reversal_needs_a_known_movement_a_reason_and_what_it_brought() {
    String lot = shelf.lotWith(24, "PT");
    String given = writeOff(lot, 3);
    String item = get("/api/movements/" + given).extract().path("entries[0].item");
    String opening = get("/api/movements?item=" + item).extract().path("items[0].id");

    post("/api/movements/" + UUID.randomUUID() + "/reversal", "{\"reason\": \"x\"}")
        .statusCode(404)
        .body("code", equalTo("unknown-movement"));
    post("/api/movements/7/reversal", "{\"reason\": \"x\"}").statusCode(404);
    post("/api/movements/" + given + "/reversal", "{\"reason\": \" \"}")
        .statusCode(400)
        .body("errors[0].field", equalTo("reason"));
    post("/api/movements/" + given + "/reversal", "{\"reason\": \"" + "x".repeat(501) + "\"}")
        .statusCode(400)
        .body("errors[0].field", equalTo("reason"));
    post("/api/movements/" + opening + "/reversal", "{\"reason\": \"Never there\"}")
        .statusCode(409)
        .body("code", equalTo("short-of-stock"));
  }

  @Test
  void what_can_be_promised_leaves_out_what_is_held() {
    String size = newSize();
    String free = shelf.lotWith(24, size);
    String held = shelf.lotWith(10, size);
    post("/api/lots/" + held + "/hold", "{\"reason\": \"Cloudy\"}").statusCode(200);

    get("/api/availability?container=" + size)
        .statusCode(200)
        .body("items", hasSize(1))
        .body("items[0].grade", equalTo("amber"))
        .body("items[0].onHand", equalTo(34))
        .body("items[0].held", equalTo(10))
        .body("items[0].reserved", equalTo(0))
        .body("items[0].out", equalTo(0))
        .body("items[0].available", equalTo(24));
    get("/api/availability?grade=amber&on=2999-01-01&limit=500")
        .body("items.container", hasItem(size));
    get("/api/availability?grade=dark&limit=500").body("items.container", not(hasItem(size)));
    get("/api/availability?on=2001-01-01").statusCode(400).body("errors[0].field", equalTo("on"));
    get("/api/availability?grade=pale").statusCode(400).body("errors[0].field", equalTo("grade"));
    assertEquals(24, shelf.standing("cool-room", free, size));
  }

  @Test
  void the_book_says_whether_it_adds_up() {
    get("/api/ledger/invariants")
        .statusCode(200)
        .body("items.name", equalTo(Invariants.NAMES))
        .body("items.violations", everyItem(hasSize(0)));
  }

  @Test
  void places_are_listed_with_what_they_are() {
    get("/api/places?limit=500")
        .statusCode(200)
        .body("items.code", hasItems("cool-room", "barrel-room", "unexplained", "packing"))
        .body("items.find { it.code == 'cool-room' }.kind", equalTo("home"))
        .body("items.find { it.code == 'packing' }.kind", equalTo("conversion"));
    get("/api/places?limit=1").body("items", hasSize(1)).body("next", notNullValue());
  }

  /** A size of this test's own, so that nobody else's jars are in its pools. */
  private static String newSize() {
    String code = "T" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
    ShelfFixture.asOwner()
        .contentType("application/json")
        .body(
            """
            {"code": "%s", "name": "Of a test", "netContents": {"value": 1, "unit": "pt"},
             "material": "plastic"}"""
                .formatted(code))
        .post("/api/containers")
        .then()
        .statusCode(201);
    return code;
  }

  private static String writeOff(String lot, int count) {
    return post(
            "/api/stock/write-offs",
            """
            {"place": "cool-room", "container": "PT", "lot": "%s", "count": %d, "cause": "given",
             "reason": "To the neighbours"}"""
                .formatted(lot, count))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static List<String> list(String one) {
    return List.of(one);
  }
}
