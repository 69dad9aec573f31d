package org.barreltally.gifts;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a gift order must not be: refused with the field named, and nothing is stored. */
@QuarkusTest
class GiftRefusalsTest {

  private static final String ADDRESS =
      "'address': {'lines': ['4 Tarn Lane'], 'town': 'Fernby', 'region': 'VT', 'postcode': '05999',"
          + " 'country': 'US'}";

  @Inject BookRows rows;

  private String box;

  @BeforeEach
  void aBox() {
    box = GiftShelf.box("Refused " + Owner.newTag(""), "22.00", "HP golden 1");
  }

  static Stream<Arguments> recipients() {
    return Stream.of(
        Arguments.of("no address", "'sendBy': '2026-12-14'", "address"),
        Arguments.of(
            "no lines",
            "'address': {'lines': [], 'town': 'Fernby', 'region': 'VT', 'postcode': '05999',"
                + " 'country': 'US'}, 'sendBy': '2026-12-14'",
            "address.lines"),
        Arguments.of(
            "bad postcode",
            ADDRESS.replace("05999", "5999") + ", 'sendBy': '2026-12-14'",
            "address.postcode"),
        Arguments.of(
            "no such country",
            ADDRESS.replace("'US'", "'Atlantis'") + ", 'sendBy': '2026-12-14'",
            "address.country"),
        Arguments.of(
            "no state",
            ADDRESS.replace("'VT'", "null") + ", 'sendBy': '2026-12-14'",
            "address.region"),
        Arguments.of("impossible date", ADDRESS + ", 'sendBy': '2026-02-30'", "sendBy"),
        Arguments.of("no date", ADDRESS, "sendBy"),
        Arguments.of(
            "sent after it is wanted",
            ADDRESS + ", 'sendBy': '2026-12-20', 'wantedBy': '2026-12-14'",
            "sendBy"),
        Arguments.of("date of another age", ADDRESS + ", 'sendBy': '0026-12-14'", "sendBy"),
        Arguments.of("zero boxes", ADDRESS + ", 'sendBy': '2026-12-14', 'count': 0", "count"),
        Arguments.of(
            "a novel on the card",
            ADDRESS + ", 'sendBy': '2026-12-14', 'card': '" + "word ".repeat(1900) + "'",
            "card"),
        Arguments.of(
            "a library on the card",
            ADDRESS + ", 'sendBy': '2026-12-14', 'card': '" + "word ".repeat(20_000) + "'",
            "card"),
        Arguments.of(
            "postage below nothing",
            ADDRESS + ", 'sendBy': '2026-12-14', 'postage': {'amount': -1, 'currency': 'USD'}",
            "postage"),
        Arguments.of(
            "postage in other money",
            ADDRESS + ", 'sendBy': '2026-12-14', 'postage': {'amount': 1, 'currency': 'EUR'}",
            "postage"),
        Arguments.of(
            "no such carrier",
            ADDRESS + ", 'wantedBy': '2026-12-14', 'carrier': 'Nobody'",
            "carrier"),
        Arguments.of(
            "another way",
            ADDRESS + ", 'sendBy': '2026-12-14', 'delivery': 'balloon'",
            "delivery"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("recipients")
  void a_recipient_is_refused_with_the_field_named(String what, String fields, String field) {
    Map<String, String> before = rows.fingerprint();
    posts(
            "/api/gift-orders",
            "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [{'name': 'Ottilie', 'box': '%s', %s}]}"
                .formatted(box, fields))
        .statusCode(400)
        .body("errors.field", hasItem("recipients[0]." + field));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void an_unknown_box_is_refused_by_name() {
    posts(
            "/api/gift-orders",
            "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [{'name': 'Ottilie', 'box': 'No such box', %s, 'sendBy': '2026-12-14'}]}"
                .formatted(ADDRESS))
        .statusCode(400)
        .body("errors[0].field", equalTo("recipients[0].box"))
        .body("errors[0].message", containsString("no such gift box"));
  }

  @Test
  void an_order_without_recipients_buyer_or_with_ten_thousand_is_refused() {
    posts("/api/gift-orders", "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': []}")
        .statusCode(400)
        .body("errors.field", hasItem("recipients"));
    posts("/api/gift-orders", "{'recipients': [{}]}")
        .statusCode(400)
        .body("errors.field", hasItem("buyer"));
    posts(
            "/api/gift-orders",
            "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [%s]}"
                .formatted(
                    String.join(",", java.util.Collections.nCopies(10_000, "{'name': 'O'}"))))
        .statusCode(400)
        .body("errors.field", equalTo(List.of("recipients")));
  }

  @Test
  void everything_that_is_wrong_is_named_at_once() {
    posts(
            "/api/gift-orders",
            "{'buyer': {'name': ''}, 'recipients': [{'name': '', 'box': '%s', 'sendBy': '2026-12-14'}, {'name': 'W', 'box': 'x', %s}], 'deposit': {'amount': -5, 'currency': 'USD'}, 'depositPercent': 101}"
                .formatted(box, ADDRESS))
        .statusCode(400)
        .body(
            "errors.field",
            hasItems(
                "buyer.name",
                "recipients[0].name",
                "recipients[0].address",
                "recipients[1].box",
                "recipients[1].sendBy",
                "deposit",
                "depositPercent"));
  }

  @Test
  void a_box_is_refused_with_every_field_named() {
    posts(
            "/api/gift-boxes",
            "{'name': '', 'contents': [{'container': 'XX', 'grade': 'processing', 'count': 0},"
                + " {'container': 'HP', 'grade': 'dark', 'count': 1, 'substitutes': [{'container':"
                + " 'HP', 'grade': 'dark'}]}]}")
        .statusCode(400)
        .body(
            "errors.field",
            hasItems(
                "name",
                "price",
                "contents[0].container",
                "contents[0].grade",
                "contents[0].count",
                "contents[1].substitutes[0]"));
    posts(
            "/api/gift-boxes",
            "{'name': 'B', 'price': {'amount': 1, 'currency': 'USD'}, 'contents': []}")
        .statusCode(400)
        .body("errors.field", hasItem("contents"));
  }

  @Test
  void a_carrier_is_refused_with_every_field_named() {
    posts(
            "/api/carriers",
            "{'name': ' ', 'weekdays': [], 'zones': [{'name': 'z', 'days': 91, 'countries':"
                + " ['USA'], 'postcodes': ['']}]}")
        .statusCode(400)
        .body(
            "errors.field",
            hasItems(
                "name",
                "weekdays",
                "zones[0].days",
                "zones[0].countries[0]",
                "zones[0].postcodes"));
  }

  @Test
  void steps_out_of_their_order_are_refused_and_change_nothing() {
    String id = GiftShelf.order(GiftShelf.posted(1, box, "12.50"));
    String one = "/api/gift-orders/" + id + "/recipients/1/";
    Map<String, String> before = rows.fingerprint();
    posts(one + "pick", "{}").statusCode(409).body("code", equalTo("not-reserved"));
    for (String step : List.of("pack", "send", "deliver", "return")) {
      posts(one + step, "{}").statusCode(409).body("code", equalTo("wrong-step"));
    }
    posts(one + "undo", "{'reason': 'x'}").statusCode(409).body("code", equalTo("nothing-to-undo"));
    posts(one + "replace", "{'lines': [{'container': 'HP', 'lot': 'X', 'count': 1}]}")
        .statusCode(409)
        .body("code", equalTo("wrong-step"));
    posts("/api/gift-orders/" + id + "/recipients/2/pick", "{}")
        .statusCode(404)
        .body("code", equalTo("unknown-recipient"));
    posts("/api/gift-orders/01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d/reserve", "{}")
        .statusCode(404)
        .body("code", equalTo("unknown-gift-order"));
    Owner.asks()
        .contentType("application/json")
        .header("Idempotency-Key", java.util.UUID.randomUUID())
        .header("If-Match", "\"99\"")
        .body("{}")
        .post("/api/gift-orders/" + id + "/reserve")
        .then()
        .statusCode(412);
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void people_stay_until_all_is_resolved_and_then_go() {
    String id = GiftShelf.order(GiftShelf.without(1, box, "collect"));
    Owner.asks().delete("/api/gift-orders/" + id + "/people").then().statusCode(409);
    posts("/api/gift-orders/" + id + "/recipients/1/cancel", "{}").statusCode(200);
    Owner.asks().delete("/api/gift-orders/" + id + "/people").then().statusCode(204);
    Owner.reads("/api/gift-orders/" + id)
        .body("recipients[0].name", equalTo(null))
        .body("buyer.name", equalTo(null));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM requests WHERE body LIKE '%Quillfeather%' OR body LIKE"
                + " '%Hesper%'"));
  }
}
