package org.barreltally.closing;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.BookRows;
import org.barreltally.documents.Page;
import org.barreltally.people.PersonFixture;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** Years long past, which no other test meets, are closed, and facts of them come late. */
@QuarkusTest
class ClosingTest {

  private static final int WRITERS = 4;
  private static final int SALES_EACH = 15;

  @Inject BookRows rows;
  @Inject ShelfFixture shelf;
  @Inject PersonFixture people;

  @Test
  void a_closed_year_says_the_same_for_ever_and_late_facts_go_to_the_open_one() {
    String lot = jarsOf(1903);
    String sale = sells(lot, "1903-08-01T15:00:00Z", 2);
    String movement = reads("/api/sales/" + sale).extract().path("movement");
    refusedClosing(1904, "earlier-year-open");
    refusedClosing(3000, "year-not-over");
    asks().get("/api/years/1902").then().statusCode(404).body("code", equalTo("unknown-year"));

    close(1903).body("state", equalTo("closed")).body("movements", equalTo(3));
    refusedClosing(1903, "year-closed");
    refusedClosing(1901, "year-closed");
    String told = reads("/api/years/1903/book").extract().asString();
    JsonPath book = new JsonPath(told);
    assertEquals(
        98, book.getInt("standing.find { it.lot == '" + lot + "' && it.container }.amount"));
    assertEquals(30.0, book.getDouble("takings[0].amount.amount"), 0.001);
    assertEquals("farm", book.getString("takings[0].channel"));

    String paper = seasonBook(1903);
    assertTrue(paper.contains("The year was closed on "), paper);
    assertTrue(paper.contains("farm 1 2 30.00 USD"), paper);

    // A sale of August 1903 is told now, the first one is taken back, the shelf of December
    // counted.
    String late = sells(lot, "1903-08-02T15:00:00Z", 3);
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Never paid'}")
        .statusCode(201)
        .body("bookYear", equalTo(1904))
        .body("late", equalTo(true))
        .body("happenedAt", startsWith("1903-08-01"))
        .body("canBeTakenBack", equalTo(false));
    posts(
            "/api/stock/counts",
            "{'place': 'cool-room', 'countedAt': '1903-12-31T12:00:00Z', 'by': 'Orla', 'lines': [{'container': 'PT', 'lot': '%s', 'count': 96}]}"
                .formatted(lot))
        .statusCode(201)
        .body("late", equalTo(true))
        .body("bookYear", equalTo(1904));

    posts("/api/lots/" + lot + "/hold", "{'reason': 'Told after the closing'}");
    posts("/api/lots/" + lot + "/regrade", "{'transmittance': 30, 'taste': 'clean'}");

    assertEquals(told, reads("/api/years/1903/book").extract().asString());
    assertEquals(paper, seasonBook(1903), "what came late is not in the book of the closed year");
    String after = seasonBook(1904);
    assertTrue(after.contains("1903-08-01 1903 Never paid"), after);
    reads("/api/years/1904/late-facts")
        .body("items.size()", equalTo(3))
        .body("items.late", equalTo(List.of(true, true, true)))
        .body("items.bookYear", hasItem(1904));
    JsonPath next = reads("/api/years/1904/book").extract().jsonPath();
    assertEquals(
        96, next.getInt("standing.find { it.lot == '" + lot + "' && it.container }.amount"));
    assertEquals(15.0, next.getDouble("takings[0].amount.amount"), 0.001); // 3 × 15 − 2 × 15
    reads("/api/movements?late=false&bookYear=1904").body("items.size()", equalTo(0));
    String lateMovement = reads("/api/sales/" + late).extract().path("movement");
    reads("/api/movements?late=true&lot=" + lot)
        .body("items.size()", equalTo(3))
        .body("items.find { it.id == '" + lateMovement + "' }.canBeTakenBack", equalTo(true));

    // The database itself books nothing in a closed year, whoever asks.
    assertEquals(0, rows.number("SELECT count(*) FROM movements WHERE book_year = 1903 AND late"));
    shelf.assertBookIsWhole();
    only_the_owner_closes();
    postings_in_flight_are_in_the_year_or_late_and_none_is_lost();
  }

  /** Its words, without when it was drawn and which backups lay there then. */
  private static String seasonBook(int year) {
    try {
      String text = Page.text(reads("/api/season-book.pdf?season=" + year).extract().asByteArray());
      return text.replaceAll("Drawn on .*", "").replaceAll("(?s)Unlike the rest.*", "");
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private void only_the_owner_closes() {
    String packer = people.with("packing", "boxes and more boxes");
    io.restassured.RestAssured.given()
        .auth()
        .preemptive()
        .basic(packer, "boxes and more boxes")
        .post("/api/years/1904/close")
        .then()
        .statusCode(403);
  }

  private void postings_in_flight_are_in_the_year_or_late_and_none_is_lost() {
    close(1904);
    String lot = jarsOf(1905);
    long before = rows.number("SELECT count(*) FROM movements WHERE book_year = 1905");
    ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
    CountDownLatch some = new CountDownLatch(WRITERS * 3);
    List<Future<?>> all = new ArrayList<>();
    for (int n = 0; n < WRITERS; n++) {
      all.add(
          writers.submit(
              () -> {
                for (int sale = 0; sale < SALES_EACH; sale++) {
                  sells(lot, "1905-09-01T15:00:00Z", 1);
                  some.countDown();
                }
              }));
    }
    try {
      some.await();
      int counted = close(1905).extract().path("movements");
      for (Future<?> each : all) {
        each.get();
      }
      long inYear = rows.number("SELECT count(*) FROM movements WHERE book_year = 1905");
      long late = rows.number("SELECT count(*) FROM movements WHERE book_year = 1906 AND late");
      assertEquals(counted, inYear, "nothing came after the closing");
      assertEquals(WRITERS * SALES_EACH, inYear - before + late, "nothing was lost");
      assertTrue(inYear - before >= WRITERS * 3, "some came before: " + inYear);
      assertEquals(inYear, rows.number("SELECT movements FROM closed_year_sums WHERE year = 1905"));
    } catch (Exception e) {
      throw new AssertionError(e);
    } finally {
      writers.shutdownNow();
    }
    shelf.assertBookIsWhole();
  }

  /** A lot of 100 pints, filled and packed in a year: two movements. */
  private static String jarsOf(int year) {
    String tag = newTag("Y");
    posts("/api/barrels", barrel(tag, year, year + "-03-14", 250, 42, 66.9, 62)).statusCode(201);
    return posts(
            "/api/canning/runs",
            """
            {'on': '%d-06-20', 'draws': [{'barrel': '%s', 'all': true}],
             'fillTemperature': {'value': 186, 'unit': 'degF'},
             'fills': [{'container': 'PT', 'count': 100}], 'transmittance': 59, 'taste': 'clean'}
            """
                .formatted(year, tag))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  private static String sells(String lot, String at, int count) {
    return posts(
            "/api/sales",
            "{'channel': 'farm', 'at': '%s', 'lines': [{'container': 'PT', 'lot': '%s', 'count': %d, 'price': {'amount': 15, 'currency': 'USD'}}], 'paid': {}}"
                .formatted(at, lot, count))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static io.restassured.response.ValidatableResponse close(int year) {
    return asks().post("/api/years/" + year + "/close").then().statusCode(200);
  }

  private void refusedClosing(int year, String code) {
    var before = rows.fingerprint();
    asks().post("/api/years/" + year + "/close").then().statusCode(409).body("code", equalTo(code));
    assertEquals(before, rows.fingerprint());
  }
}
