package org.barreltally.shops;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shops on consignment: brought, counted, settled. Every sum worked out by hand beside it. */
@QuarkusTest
class ShopsOverRestTest {

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  /**
   * 24 brought at $15; 9 counted, the shop sold 14, so 1 is missing. The shop keeps 40 %.
   *
   * <ul>
   *   <li>It bears what is missing: 15 × (14 + 1) × 0.6 = 135.00.
   *   <li>The maker does: 15 × 14 × 0.6 = 126.00.
   *   <li>Half each: 15 × (14 + 0.5) × 0.6 = 130.50.
   *   <li>A quarter the shop: 15 × 14.25 × 0.6 = 128.25.
   * </ul>
   */
  @ParameterizedTest
  @CsvSource({"shop, '', 135.0", "maker, '', 126.0", "split, '', 130.5", "split, 25, 128.25"})
  void what_is_missing_is_borne_by_the_named_rule(String rule, String bears, float due) {
    String size = newSize(16);
    String lot = shelf.lotWith(30, size);
    String shop =
        shop(
            size,
            "15.00",
            "'commissionPercent': 40, 'missing': '%s'%s"
                .formatted(rule, bears.isEmpty() ? "" : ", 'shopBearsPercent': " + bears));
    bring(shop, size, lot, 24).statusCode(201);
    assertEquals(24, shelf.standing("shop-" + shop, lot, size));
    count(shop, size, lot, 9, ", 'sold': 14")
        .statusCode(201)
        .body("lines[0].missing", equalTo(1))
        .body("due.amount", equalTo(due));
    assertEquals(9, shelf.standing("shop-" + shop, lot, size));
    assertEquals(14, shelf.standing("customer", lot, size));
    assertEquals(1, shelf.standing("unexplained", lot, size));
    reads("/api/shops/" + shop + "/statement").body("balance.amount", equalTo(due));
  }

  /** To net $10 at 40 % the price is $16.67: 16.67 × 0.6 = 10.002, rounded once to 10.00. */
  @Test
  void a_line_is_rounded_once_half_up() {
    String size = newSize(16);
    String lot = shelf.lotWith(4, size);
    String shop = shop(size, "16.67", "'commissionPercent': 40");
    bring(shop, size, lot, 4);
    count(shop, size, lot, 3, "").body("due.amount", equalTo(10.0f));
    // three more: 3 × 16.67 × 0.6 = 30.006
    count(shop, size, lot, 0, "").body("due.amount", equalTo(30.01f));
  }

  /**
   * September: 24 brought, 10 sold, due 10 × 15 × 0.6 = 90, paid 50. October: 6 fetched, 3 sold,
   * due 27. Owed before October 40, after it 67.
   */
  @Test
  void a_statement_of_a_month_opens_with_what_stood_and_was_owed() {
    String size = newSize(16);
    String lot = shelf.lotWith(24, size);
    String shop = shop(size, "15.00", "'commissionPercent': 40");
    move(shop, "deliveries", size, lot, 24, "2026-09-01").statusCode(201);
    countOn(shop, size, lot, 14, "2026-09-20").statusCode(201);
    posts(
            "/api/shops/" + shop + "/payments",
            "{'on': '2026-09-25', 'amount': {'amount': 50, 'currency': 'USD'}}")
        .statusCode(201);
    move(shop, "fetchings", size, lot, 6, "2026-10-05").statusCode(201);
    countOn(shop, size, lot, 5, "2026-10-20").statusCode(201);

    reads("/api/shops/" + shop + "/statement?from=2026-10-01&to=2026-10-31")
        .body("items", hasSize(1))
        .body("items[0].opening", equalTo(14))
        .body("items[0].fetched", equalTo(6))
        .body("items[0].sold", equalTo(3))
        .body("items[0].closing", equalTo(5))
        .body("dueBefore.amount", equalTo(40.0f))
        .body("due.amount", equalTo(27.0f))
        .body("balance.amount", equalTo(67.0f));
    assertEquals(6, shelf.standing("cool-room", lot, size));
  }

  @Test
  void what_a_shop_has_is_still_the_makers_and_cannot_be_promised() {
    String size = newSize(16);
    String lot = shelf.lotWith(10, size);
    String shop = shop(size, "15.00", "'commissionPercent': 40");
    bring(shop, size, lot, 6);
    reads("/api/stock?lot=" + lot).body("items.onHand.sum()", equalTo(10));
    reads("/api/availability?container=" + size)
        .body("items[0].out", equalTo(6))
        .body("items[0].available", equalTo(4));
    reads("/api/lots/" + lot + "/trace")
        .body("whereabouts.find { it.place == 'shop-%s' }.count".formatted(shop), equalTo(6));
  }

  @Test
  void terms_changed_later_leave_settled_counts_as_they_were() {
    String size = newSize(16);
    String lot = shelf.lotWith(10, size);
    String shop = shop(size, "15.00", "'commissionPercent': 40, 'since': '2026-01-01'");
    bring(shop, size, lot, 10);
    count(shop, size, lot, 9, "").body("due.amount", equalTo(9.0f));
    posts(
            "/api/shops/" + shop + "/terms",
            "{'commissionPercent': 20, 'priceList': '%s'}".formatted(list(size, "20.00")))
        .statusCode(201);
    count(shop, size, lot, 8, "").body("due.amount", equalTo(16.0f));
    reads("/api/shops/" + shop + "/statement").body("balance.amount", equalTo(25.0f));
  }

  @Test
  void more_than_the_book_had_is_taken_and_looked_at_and_a_count_can_be_taken_back() {
    String size = newSize(16);
    String lot = shelf.lotWith(10, size);
    String shop = shop(size, "15.00", "'commissionPercent': 40");
    bring(shop, size, lot, 5);
    String movement =
        count(shop, size, lot, 7, "")
            .body("lines[0].missing", equalTo(-2))
            .body("due.amount", equalTo(0.0f))
            .body("lookAt[0]", containsString("2 × " + size))
            .extract()
            .path("movement");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Counted the next shelf'}")
        .statusCode(201);
    reads("/api/shops/" + shop + "/statement")
        .body("counts", empty())
        .body("items[0].closing", equalTo(5));
  }

  @Test
  void held_jars_stay_home_and_come_home() {
    String size = newSize(16);
    String lot = shelf.lotWith(10, size);
    String shop = shop(size, "15.00", "'commissionPercent': 40");
    bring(shop, size, lot, 5);
    posts("/api/lots/" + lot + "/hold", "{'reason': 'Tried'}").statusCode(200);
    bring(shop, size, lot, 1).statusCode(409).body("code", equalTo("lot-held"));
    move(shop, "fetchings", size, lot, 5, null).statusCode(201);
    assertEquals(10, shelf.standing("cool-room", lot, size));
  }

  @Test
  void what_cannot_be_is_refused_by_name() {
    String size = newSize(16);
    String lot = shelf.lotWith(10, size);
    String shop = shop(size, "15.00", "'commissionPercent': 40");
    posts(
            "/api/shops",
            "{'name': 'All of it %s', 'commissionPercent': 100}".formatted(UUID.randomUUID()))
        .statusCode(400)
        .body("errors[0].field", equalTo("commissionPercent"));
    posts("/api/shops", "{'name': '%s', 'commissionPercent': 10}".formatted(name(shop)))
        .statusCode(409)
        .body("code", equalTo("shop-exists"));
    bring(shop, size, lot, 11).statusCode(409);
    bring("nowhere", size, lot, 1).statusCode(404).body("code", equalTo("unknown-shop"));
    bring(shop, size, lot, 5).statusCode(201);
    String other = shelf.lotWith(5, size);
    bring(shop, size, other, 5).statusCode(201);
    count(shop, size, lot, 5, "").statusCode(400).body("code", equalTo("not-counted"));
    countOn(shop, size, lot, 5, "2020-01-01")
        .statusCode(409)
        .body("code", equalTo("shelf-changed-later"));
    String twice =
        "{'container': '%1$s', 'lot': '%2$s', 'count': 1}, {'container': '%1$s', 'lot': '%2$s', 'count': 1}"
            .formatted(size, lot);
    posts("/api/shops/" + shop + "/counts", "{'lines': [" + twice + "]}")
        .statusCode(400)
        .body("code", equalTo("counted-twice"));
    String noPrice = newSize(8);
    String unpriced = shelf.lotWith(3, noPrice);
    String second = shop(size, "15.00", "'commissionPercent': 40");
    bring(second, noPrice, unpriced, 3).statusCode(201);
    count(second, noPrice, unpriced, 2, "").statusCode(422).body("code", equalTo("no-shop-price"));
    Owner.asks()
        .get("/api/shops/" + shop + "/statement?from=2026-10-01&to=2026-09-01")
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo("to"));
  }

  @Test
  void the_papers_say_what_came_was_sold_and_is_due() throws Exception {
    String size = newSize(16);
    String lot = shelf.lotWith(30, size);
    String shop =
        shop(
            size,
            "15.00",
            "'commissionPercent': 40, 'missing': 'split', 'details': '3 Millrace Lane'");
    String delivery = bring(shop, size, lot, 24).extract().path("id");
    String note = pdf("/api/shops/" + shop + "/deliveries/" + delivery + "/note.pdf");
    assertTrue(note.contains(lot) && note.contains("24") && note.contains("3 Millrace Lane"), note);
    count(shop, size, lot, 9, ", 'sold': 14").statusCode(201);
    String statement = pdf("/api/shops/" + shop + "/statement.pdf");
    for (String words :
        new String[] {
          lot,
          "The shop keeps 40 % of each price",
          "the shop bears 50 %",
          "130.50 USD",
          "To be paid"
        }) {
      assertTrue(statement.contains(words), () -> words + " in " + statement);
    }
    Owner.asks()
        .get("/api/shops/" + shop + "/deliveries/" + UUID.randomUUID() + "/note.pdf")
        .then()
        .statusCode(404);
  }

  private static String shop(String size, String price, String terms) {
    return posts(
            "/api/shops",
            "{'name': 'Quillback Store %s', %s, 'priceList': '%s'}"
                .formatted(UUID.randomUUID().toString().substring(0, 8), terms, list(size, price)))
        .statusCode(201)
        .extract()
        .path("code");
  }

  private static String name(String shop) {
    return reads("/api/shops/" + shop).extract().path("name");
  }

  private static String list(String size, String price) {
    return posts(
            "/api/price-lists",
            "{'name': 'Shops %s %s', 'audience': 'wholesale', 'validFrom': '2020-01-01', 'lines': [{'container': '%s', 'price': {'amount': %s, 'currency': 'USD'}}]}"
                .formatted(size, price, size, price))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static ValidatableResponse bring(String shop, String size, String lot, int count) {
    return move(shop, "deliveries", size, lot, count, null);
  }

  private static ValidatableResponse move(
      String shop, String way, String size, String lot, int count, String on) {
    return posts(
        "/api/shops/" + shop + "/" + way,
        "{%s'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}"
            .formatted(on == null ? "" : "'on': '" + on + "', ", size, lot, count));
  }

  private static ValidatableResponse countOn(
      String shop, String size, String lot, int count, String on) {
    return posts(
        "/api/shops/" + shop + "/counts",
        "{'on': '%s', 'lines': [{'container': '%s', 'lot': '%s', 'count': %d}]}"
            .formatted(on, size, lot, count));
  }

  private static ValidatableResponse count(
      String shop, String size, String lot, int count, String rest) {
    return posts(
        "/api/shops/" + shop + "/counts",
        "{'lines': [{'container': '%s', 'lot': '%s', 'count': %d%s}]}"
            .formatted(size, lot, count, rest));
  }

  private static String pdf(String path) throws Exception {
    byte[] pdf = Owner.asks().get(path).then().statusCode(200).extract().asByteArray();
    try (var document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }
}
