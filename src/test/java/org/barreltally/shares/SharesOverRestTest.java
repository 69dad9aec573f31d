package org.barreltally.shares;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Landowners paid in syrup. Every sum was worked out by hand; the working stands beside it. That a
 * gallon is 128 fluid ounces is its definition (231 cubic inches).
 */
@QuarkusTest
class SharesOverRestTest {

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  /**
   * 420 taps × $1.10 = $462.00; at $55 a gallon 462 / 55 = 8.4 gal. Two gallons and sixteen
   * half-pints (16 × 8 = 128 fl oz, one gallon) are 3 gal, $165. Left 5.4 gal, 5.4 × 55 = $297.
   */
  @Test
  void by_volume_sixteen_half_pints_are_a_gallon() {
    String gallon = newSize(128);
    String half = newSize(8);
    String lot = shelf.lotWith(20, gallon, half);
    String lease = agreed(terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 420));
    statement(lease).body("owed.amount", equalTo(462.0f)).body("owedVolume.value", equalTo(8.4f));

    handOver(lease, line(gallon, lot, 2), line(half, lot, 16)).statusCode(201);

    assertEquals(18, shelf.standing("cool-room", lot, gallon));
    assertEquals(16, shelf.standing("landowner", lot, half));
    statement(lease)
        .body("delivered", hasSize(2))
        .body("delivered[1].volume.value", equalTo(1))
        .body("delivered[1].value.amount", equalTo(55.0f))
        .body("deliveredVolume.value", equalTo(3))
        .body("carriedVolume.value", equalTo(5.4f))
        .body("carried.amount", equalTo(297.0f));
  }

  /**
   * 420 taps × $1.10 = $462.00, 8.4 gal at $55; two gallons handed over leave 6.4 gal, 6.4 × 55 =
   * $352.00. Closed, it is left out of what is open and stands in the whole list.
   */
  @Test
  void what_is_still_owed_is_listed_lease_by_lease() {
    String gallon = newSize(128);
    String lot = shelf.lotWith(3, gallon);
    String lease = agreed(terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 420));
    handOver(lease, line(gallon, lot, 2)).statusCode(201);
    String mine = "items.find { it.lease == '" + lease + "' }";
    reads("/api/shares?limit=500&open=true&season=2026")
        .body(mine + ".owed.amount", equalTo(462.0f))
        .body(mine + ".delivered.amount", equalTo(110.0f))
        .body(mine + ".left.amount", equalTo(352.0f))
        .body(mine + ".leftVolume.value", equalTo(6.4f))
        .body(mine + ".open", equalTo(true));
    posts("/api/leases/" + lease + "/close", "{}").statusCode(201);
    reads("/api/shares?limit=500&open=true").body(mine, nullValue());
    reads("/api/shares?limit=500").body(mine + ".open", equalTo(false));
  }

  @ParameterizedTest
  @CsvSource({"season=spring, season", "open=perhaps, open", "after=there, after"})
  void a_list_asked_wrongly_names_the_field(String query, String field) {
    for (String path : new String[] {"/api/shares?", "/api/leases?"}) {
      Owner.asks().get(path + query).then().statusCode(400).body("errors[0].field", equalTo(field));
    }
  }

  /**
   * 63 taps × $1 = $63, at $63 a gallon one gallon. Half-pints at $9: seven are 7 × 9 = $63, so
   * seven, not sixteen, pay it.
   */
  @Test
  void by_list_value_seven_half_pints_are_a_gallons_worth() {
    String half = newSize(8);
    String lot = shelf.lotWith(20, half);
    String lease =
        agreed(
            terms("list-value", "set", "1.00", "63.00")
                + ", 'priceList': '%s'".formatted(priceList(half, "9.00")),
            tap("2026-02-14", 63));
    handOver(lease, line(half, lot, 7)).statusCode(201);
    statement(lease)
        .body("delivered[0].listPrice.amount", equalTo(9.0f))
        .body("deliveredValue.amount", equalTo(63.0f))
        .body("deliveredListValue.amount", equalTo(63.0f))
        .body("carried.amount", equalTo(0.0f))
        .body("carriedVolume.value", equalTo(0));
  }

  /**
   * 100 taps × $1.10 = $110. Sixteen half-pints: one gallon $55, and 16 × $1.25 = $20 for the
   * glass, $75. Left 110 − 75 = $35, at $55 a gallon 35 / 55 = 0.6364 gal.
   */
  @Test
  void by_volume_plus_container_the_glass_counts_too() {
    String half = newSize(8);
    String lot = shelf.lotWith(20, half);
    String lease =
        agreed(
            terms("volume-plus-container", "set", "1.10", "55.00")
                + ", 'containerCharges': [{'container': '%s', 'charge': {'amount': 1.25, 'currency': 'USD'}}]"
                    .formatted(half),
            tap("2026-02-14", 100));
    handOver(lease, line(half, lot, 16)).statusCode(201);
    statement(lease)
        .body("deliveredValue.amount", equalTo(75.0f))
        .body("carried.amount", equalTo(35.0f))
        .body("carriedVolume.value", equalTo(0.6364f));
  }

  /**
   * Agreed 420, set 404: by the agreed 420 × 1.10 = $462.00; by the set 404 × 1.10 = $444.40, which
   * at $55 buys 8.08 gal.
   */
  @Test
  void the_lease_says_which_count_governs_and_a_later_count_of_it_holds_for_the_season() {
    String counts =
        tap("2026-01-10", 420).replace("}", ", 'kind': 'agreed'}")
            + ", "
            + tap("2026-02-14", 420).replace("}", ", 'kind': 'set'}");
    String agreed = agreed(terms("volume", "agreed", "1.10", "55.00"), counts);
    String set = agreed(terms("volume", "set", "1.10", "55.00"), counts);
    for (String lease : new String[] {agreed, set}) {
      posts(
              "/api/leases/" + lease + "/taps",
              "{'from': '2026-03-20', 'count': 404, 'kind': 'set', 'note': 'The storm took eight trees'}")
          .statusCode(201);
    }
    statement(agreed).body("tapsCounted", equalTo(420)).body("owed.amount", equalTo(462.0f));
    statement(set)
        .body("tapsCounted", equalTo(404))
        .body("owed.amount", equalTo(444.4f))
        .body("owedVolume.value", equalTo(8.08f))
        .body("taps", hasSize(3));
  }

  @Test
  void a_hand_over_taken_back_counts_no_more() {
    String gallon = newSize(128);
    String lot = shelf.lotWith(20, gallon);
    String lease = agreed(terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 100));
    String movement = handOver(lease, line(gallon, lot, 2)).extract().path("movement");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Wrong landowner'}")
        .statusCode(201);
    assertEquals(20, shelf.standing("cool-room", lot, gallon));
    statement(lease).body("delivered", empty()).body("carriedVolume.value", equalTo(2));
  }

  @Test
  void many_at_once_never_hand_over_the_same_jar() throws Exception {
    String gallon = newSize(128);
    String lot = shelf.lotWith(7, gallon);
    String[] leases = new String[4];
    for (int n = 0; n < leases.length; n++) {
      leases[n] = agreed(terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 100));
    }
    ExecutorService threads = Executors.newFixedThreadPool(8);
    Callable<Integer>[] tries = new Callable[16];
    IntStream.range(0, tries.length)
        .forEach(
            n ->
                tries[n] =
                    () ->
                        handOver(leases[n % leases.length], line(gallon, lot, 1))
                            .extract()
                            .statusCode());
    int handed = 0;
    for (var answer : threads.invokeAll(java.util.List.of(tries))) {
      assertTrue(answer.get() == 201 || answer.get() == 409, "status " + answer.get());
      handed += answer.get() == 201 ? 1 : 0;
    }
    threads.shutdown();
    assertEquals(7, handed);
    assertEquals(7, shelf.standing("landowner", lot, gallon));
  }

  @Test
  void the_same_hand_over_said_twice_happens_once_and_the_trace_knows_where_it_went() {
    String gallon = newSize(128);
    String lot = shelf.lotWith(5, gallon);
    String lease = agreed(terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 100));
    UUID key = UUID.randomUUID();
    String body = "{'lines': [" + line(gallon, lot, 2) + "]}";
    String id = posts("/api/leases/" + lease + "/deliveries", body, key).extract().path("id");
    posts("/api/leases/" + lease + "/deliveries", body, key).body("id", equalTo(id));
    assertEquals(3, shelf.standing("cool-room", lot, gallon));
    reads("/api/lots/" + lot + "/trace")
        .body("whereabouts.find { it.recipient == 'landowner' }.count", equalTo(2));
  }

  @Test
  void the_statement_on_paper_shows_each_step_of_the_sum() throws Exception {
    String gallon = newSize(128);
    String lot = shelf.lotWith(5, gallon);
    String owner = newName();
    String lease =
        lease(owner, 2026, terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 420));
    handOver(lease, line(gallon, lot, 3)).statusCode(201);
    String text = pdf("/api/leases/" + lease + "/statement.pdf");
    for (String words :
        new String[] {
          owner,
          "Rent: 420 taps × 1.10 USD",
          "462.00 USD",
          "8.4",
          lot,
          "Still owed, carried on",
          "297.00 USD",
          "5.4",
          "fair market value"
        }) {
      assertTrue(text.contains(words), () -> words + " in " + text);
    }
  }

  @Test
  void a_landowner_can_be_renamed_and_removed() {
    String owner = newName();
    String lease =
        lease(owner, 2026, terms("volume", "set", "1.10", "55.00"), tap("2026-02-14", 1));
    String id = reads("/api/leases/" + lease).extract().path("landownerId");
    Owner.asks()
        .contentType("application/json")
        .body("{\"name\": \"removed %s\"}".formatted(id))
        .put("/api/landowners/" + id)
        .then()
        .statusCode(200);
    reads("/api/leases/" + lease).body("landowner", containsString("removed"));
  }

  static String terms(String basis, String governs, String rate, String price) {
    return "'basis': '%s', 'governs': '%s', 'ratePerTap': {'amount': %s, 'currency': 'USD'}, 'price': {'amount': %s, 'currency': 'USD'}"
        .formatted(basis, governs, rate, price);
  }

  static String tap(String from, int count) {
    return "{'from': '%s', 'count': %d}".formatted(from, count);
  }

  static String line(String size, String lot, int count) {
    return "{'container': '%s', 'lot': '%s', 'count': %d}".formatted(size, lot, count);
  }

  static String newName() {
    return "Odile Fernsby " + UUID.randomUUID().toString().substring(0, 8);
  }

  private static String agreed(String terms, String taps) {
    return lease(newName(), 2026, terms, taps);
  }

  static String lease(String owner, int season, String terms, String taps) {
    return posts(
            "/api/leases",
            "{'landowner': '%s', 'bush': 'Upper Wend', 'season': %d, %s, 'taps': [%s]}"
                .formatted(owner, season, terms, taps))
        .statusCode(201)
        .extract()
        .path("id");
  }

  static ValidatableResponse handOver(String lease, String... lines) {
    return posts(
        "/api/leases/" + lease + "/deliveries", "{'lines': [" + String.join(", ", lines) + "]}");
  }

  static ValidatableResponse statement(String lease) {
    return reads("/api/leases/" + lease + "/statement");
  }

  static String priceList(String size, String price) {
    return posts(
            "/api/price-lists",
            "{'name': 'Tried %s', 'audience': 'wholesale', 'validFrom': '2024-01-01', 'lines': [{'container': '%s', 'price': {'amount': %s, 'currency': 'USD'}}]}"
                .formatted(size, size, price))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static String pdf(String path) throws Exception {
    byte[] pdf = Owner.asks().get(path).then().statusCode(200).extract().asByteArray();
    try (var document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }
}
