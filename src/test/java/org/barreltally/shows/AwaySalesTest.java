package org.barreltally.shows;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.shows.Fairs.newSize;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Sales at the farm gate, by post and wholesale: papers, refusals and jars that come back. */
@QuarkusTest
class AwaySalesTest {

  @Inject ShelfFixture shelf;
  @Inject BookRows rows;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void a_sale_by_post_leaves_the_cool_room_and_has_an_invoice_until_its_buyer_is_removed()
      throws Exception {
    String size = newSize();
    String lot = shelf.lotWith(10, size);
    String id =
        sell("post", size, lot, 3, "'paid': {'owing': {'amount': 45, 'currency': 'USD'}}")
            .statusCode(201)
            .body("total.amount", equalTo(45.0f))
            .body("buyer", nullValue())
            .body("notes", empty())
            .extract()
            .path("id");
    assertEquals(7, shelf.standing("cool-room", lot, size));
    String number =
        reads("/api/sales/" + id + "/invoice")
            .body("buyer.name", equalTo("Hesper Loomworks"))
            .extract()
            .path("number");
    String text = pdf(id);
    assertTrue(text.contains("Invoice " + number), text);
    assertTrue(text.contains("Hesper Loomworks") && text.contains("4 Weir Lane"), text);
    assertTrue(text.contains(lot) && text.contains("45.00 USD"), text);

    Owner.asks().delete("/api/sales/" + id + "/buyer").then().statusCode(204);
    reads("/api/sales/" + id + "/invoice")
        .body("buyer", nullValue())
        .body("number", equalTo(number));
    assertFalse(pdf(id).contains("Hesper"));
  }

  @Test
  void jars_promised_to_a_show_are_not_sold_at_the_gate() {
    String size = newSize();
    String lot = shelf.lotWith(10, size);
    String show = Fairs.accepted(Fairs.newName("Promised Fair"), "2026-09-12");
    posts(
            "/api/shows/" + show + "/reservations",
            "{'lines': [{'container': '%s', 'grade': 'amber', 'count': 7}]}".formatted(size))
        .statusCode(201);

    sell("farm", size, lot, 4, "'paid': {}")
        .statusCode(409)
        .body("code", equalTo("short-of-stock"))
        .body("detail", containsString("4 wanted, 3 not promised to others"));
    assertEquals(10, shelf.standing("cool-room", lot, size));
    sell("farm", size, lot, 3, "'paid': {}").statusCode(201);
  }

  @Test
  void a_sale_paid_in_full_has_a_receipt() throws Exception {
    String size = newSize();
    String lot = shelf.lotWith(10, size);
    String id =
        sell("farm", size, lot, 1, "'paid': {'cash': {'amount': 20, 'currency': 'USD'}}")
            .body("changeDue.amount", equalTo(5.0f))
            .extract()
            .path("id");
    assertTrue(pdf(id).contains("Receipt "));
  }

  @Test
  void numbers_run_without_gaps_though_sales_are_refused_between_and_many_sell_at_once()
      throws Exception {
    String size = newSize();
    String lot = shelf.lotWith(12, size);
    List<Callable<ValidatableResponse>> tries = new ArrayList<>();
    IntStream.range(0, 24).forEach(n -> tries.add(() -> sell("farm", size, lot, 1, "'paid': {}")));
    ExecutorService threads = Executors.newFixedThreadPool(8);
    int sold = 0;
    for (Future<ValidatableResponse> answer : threads.invokeAll(tries)) {
      int status = answer.get().extract().statusCode();
      assertTrue(status == 201 || status == 409, "status " + status);
      sold += status == 201 ? 1 : 0;
    }
    threads.shutdown();
    assertEquals(12, sold);
    assertEquals(0, shelf.standing("cool-room", lot, size));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM (SELECT year, max(number) - count(*) AS gap FROM sale_papers"
                + " GROUP BY year) g WHERE gap <> 0"));
  }

  @Test
  void without_a_lot_the_oldest_goes_first_and_the_sale_says_so() {
    String size = newSize();
    String first = shelf.lotWith(2, size);
    String second = shelf.lotWith(5, size);
    String older = first.compareTo(second) < 0 ? first : second; // packed on the same day
    String newer = older.equals(first) ? second : first;
    long inOlder = older.equals(first) ? 2 : 5;
    posts(
            "/api/sales",
            "{'channel': 'farm', 'lines': [{'container': '%s', 'count': 6, 'price': {'amount': 15, 'currency': 'USD'}}], 'paid': {'cash': {'amount': 90, 'currency': 'USD'}}}"
                .formatted(size))
        .statusCode(201)
        .body("lines.lot", contains(older, newer))
        .body("lines.count", contains((int) inOlder, (int) (6 - inOlder)))
        .body("total.amount", equalTo(90.0f))
        .body("notes.code", contains("lot-chosen", "lot-chosen"));
    posts(
            "/api/sales",
            "{'channel': 'farm', 'lines': [{'container': '%s', 'count': 2}], 'paid': {}}"
                .formatted(size))
        .statusCode(409)
        .body("code", equalTo("short-of-stock"))
        .body("detail", containsString("holds 1 × " + size));
  }

  @Test
  void what_cannot_be_sold_from_home_is_refused_by_name() {
    String size = newSize();
    String lot = shelf.lotWith(2, size);
    String held = shelf.lotWith(2, size);
    posts("/api/lots/" + held + "/hold", "{'reason': 'Cloudy'}").statusCode(200);
    var before = rows.fingerprint();
    refused(sell("farm", size, lot, 3, "'paid': {}"), 409, "short-of-stock", null);
    refused(sell("farm", size, held, 1, "'paid': {}"), 409, "lot-held", "lines[0].lot");
    refused(sell("farm", size, "NO-LOT", 1, "'paid': {}"), 400, "unknown-lot", "lines[0].lot");
    refused(sell("moon", size, lot, 1, "'paid': {}"), 400, "invalid-field", "channel");
    refused(sell("table", size, lot, 1, "'paid': {}"), 400, "invalid-field", "channel");
    refused(sell("farm", size, lot, 0, "'paid': {}"), 400, "invalid-field", "lines[0].count");
    refused(
        sell("farm", size, lot, 1, "'paid': {}, 'at': '2199-01-01T00:00:00Z'"),
        400,
        "in-the-future",
        "at");
    refused(
        sell("farm", size, lot, 1, "'paid': {}, 'place': 'customer'"),
        400,
        "unknown-place",
        "place");
    refused(
        sell("farm", size, lot, 1, "'paid': {}, 'priceList': '" + UUID.randomUUID() + "'"),
        400,
        "unknown-price-list",
        "priceList");
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void returned_jars_are_stock_again_only_after_somebody_looked_at_them() {
    String size = newSize();
    String lot = shelf.lotWith(10, size);
    String id = sell("post", size, lot, 4, "'paid': {}").statusCode(201).extract().path("id");
    String movement = reads("/api/sales/" + id).extract().path("movement");
    String lines = "'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]";

    posts(
            "/api/sales/" + id + "/returns",
            ("{" + lines + ", 'reason': 'Box crushed'}").formatted(size, lot, 5))
        .statusCode(409)
        .body("code", equalTo("more-than-sold"));
    String back =
        posts(
                "/api/sales/" + id + "/returns",
                ("{"
                        + lines
                        + ", 'reason': 'Box crushed', 'refund': {'amount': 30, 'currency': 'USD'}}")
                    .formatted(size, lot, 3))
            .statusCode(201)
            .body("lines[0].toInspect", equalTo(3))
            .extract()
            .path("id");
    assertEquals(6, shelf.standing("cool-room", lot, size));
    reads("/api/availability?container=" + size).body("items[0].available", equalTo(6));
    // The sale cannot be taken back under its return.
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'No'}")
        .statusCode(409)
        .body("code", equalTo("cannot-be-taken-back"));

    String inspection = "{'lines': [{'container': '%s', 'lot': '%s', 'sound': %d, 'broken': %d}]}";
    posts("/api/sales/returns/" + back + "/inspection", inspection.formatted(size, lot, 3, 1))
        .statusCode(409)
        .body("code", equalTo("more-than-returned"));
    posts("/api/sales/returns/" + back + "/inspection", inspection.formatted(size, lot, 2, 1))
        .statusCode(200)
        .body("lines[0].toInspect", equalTo(0));
    assertEquals(8, shelf.standing("cool-room", lot, size));
    assertEquals(0, shelf.standing("to-inspect", lot, size));
    assertEquals(1, shelf.standing("customer", lot, size));
    reads("/api/availability?container=" + size).body("items[0].available", equalTo(8));
    reads("/api/sales/" + id + "/returns").body("items[0].refund.amount", equalTo(30.0f));
  }

  @Test
  void a_trace_says_what_is_certain_and_what_is_possible() {
    // 8 of one lot and 2 of another out; 3 sold without lot and 1 of the first lot by name. Of the
    // first lot 7 are left by the book: 4 to 6... at least 7 - 3 = 4, at most 7 - (3 - 2) = 6 stand
    // there, so 1 to 3 of the open ones were of it, 0 to 2 of the other.
    String size = newSize();
    String one = shelf.lotWith(8, size);
    String two = shelf.lotWith(2, size);
    String show = Fairs.accepted(Fairs.newName("Plough Day"), "2026-09-12");
    Fairs.packOut(show, Fairs.line(size, one, 8) + "," + Fairs.line(size, two, 2)).statusCode(201);
    String sale =
        "{'id': '%s', 'at': '2026-09-12T14:00:00Z', 'lines': [{'container': '%s'%s, 'count': %d}], 'paid': {}}";
    posts(
            "/api/shows/" + show + "/sales",
            "["
                + sale.formatted(UUID.randomUUID(), size, "", 3)
                + ","
                + sale.formatted(UUID.randomUUID(), size, ", 'lot': '" + one + "'", 1)
                + "]")
        .statusCode(201);
    String place = Fairs.place(show);
    var first = reads("/api/lots/" + one + "/trace");
    first.body(
        "whereabouts.find { it.place == '" + place + "' && it.certainty == 'exact' }.count", is(4));
    first.body(
        "whereabouts.find { it.place == '" + place + "' && it.certainty == 'possible' }.count",
        is(2));
    first.body(
        "whereabouts.find { it.recipient == 'customer' && it.certainty == 'exact' }.count", is(2));
    first.body(
        "whereabouts.find { it.recipient == 'customer' && it.certainty == 'possible' }.count",
        is(2));
    reads("/api/lots/" + two + "/trace")
        .body("whereabouts.find { it.recipient == 'customer' }.certainty", equalTo("possible"))
        .body("whereabouts.find { it.recipient == 'customer' }.count", is(2));

    // Counted and settled, it is certain: of one 5 came back, so 3 are with buyers, of two 1.
    Fairs.back(show, Fairs.line(size, one, 5) + "," + Fairs.line(size, two, 1)).statusCode(201);
    posts("/api/shows/" + show + "/settlement", "{}").statusCode(200);
    reads("/api/lots/" + one + "/trace")
        .body("whereabouts.certainty.unique()", contains("exact"))
        .body("whereabouts.find { it.recipient == 'customer' }.count", is(3))
        .body("accounted", is(8));
    reads("/api/lots/" + two + "/trace")
        .body("whereabouts.find { it.recipient == 'customer' }.count", is(1));
  }

  private static void refused(ValidatableResponse answer, int status, String code, String field) {
    answer.statusCode(status).body("code", equalTo(code));
    if (field != null) {
      answer.body("errors[0].field", equalTo(field));
    }
  }

  private static String pdf(String id) throws Exception {
    byte[] bytes =
        Owner.asks()
            .get("/api/sales/" + id + "/invoice.pdf")
            .then()
            .statusCode(200)
            .extract()
            .asByteArray();
    try (var document = Loader.loadPDF(bytes)) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static ValidatableResponse sell(
      String channel, String size, String lot, int count, String rest) {
    return posts(
        "/api/sales",
        "{'channel': '%s', 'buyer': {'name': 'Hesper Loomworks', 'address': ['4 Weir Lane', 'Fernby']}, 'lines': [{'container': '%s', 'lot': '%s', 'count': %d, 'price': {'amount': 15, 'currency': 'USD'}}], %s}"
            .formatted(channel, size, lot, count, rest));
  }
}
