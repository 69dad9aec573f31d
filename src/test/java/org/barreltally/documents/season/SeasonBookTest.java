package org.barreltally.documents.season;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.barreltally.documents.Page;
import org.barreltally.people.PersonFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The book of a season long past, which no other test meets, and what the book refuses. */
@QuarkusTest
class SeasonBookTest {

  private static final int YEAR = 1932;
  private static final String BOOK = "/api/season-book.pdf?season=";

  @Inject BookRows rows;
  @Inject PersonFixture people;

  @Test
  void a_season_is_told_chapter_by_chapter() throws Exception {
    String kept = filled("KEPT");
    String drawn = filled("DRAW");
    String sold = filled("SOLD");
    String lot = canned(drawn);
    posts(
            "/api/barrels/" + sold + "/bulk-sale",
            """
            {'on': '1932-05-12', 'buyer': {'name': 'Thistledown Packers', 'details': 'Gate 3'},
             'ours': {'weight': {'value': 208, 'unit': 'lb'}, 'grade': 'amber'},
             'theirs': {'weight': {'value': 208, 'unit': 'lb'}, 'grade': 'amber'},
             'agreed': {'weight': {'value': 208, 'unit': 'lb'}, 'grade': 'amber'},
             'prices': {'amber': {'amount': 2.35, 'currency': 'USD'}}}
            """)
        .statusCode(201);
    sells(lot, 2);
    String wrong = sells(lot, 5);
    String movement = reads("/api/sales/" + wrong).extract().path("movement");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Typed twice, 苹果'}")
        .statusCode(201);
    posts(
            "/api/stock/counts",
            "{'place': 'cool-room', 'countedAt': '1932-12-30T12:00:00Z', 'by': 'Orla', 'lines': [{'container': 'PT', 'lot': '%s', 'count': 97}]}"
                .formatted(lot))
        .statusCode(201);

    byte[] pdf = pdf(YEAR);
    String text = Page.text(pdf).replaceAll("\\s+", " ");
    holds(text, "Season 1932", "Drawn on", "The year is not closed");
    holds(text, "Your state agency, your inspector and your tax preparer decide");
    // 208 lb on a scale in air; in a vacuum × (1 − 1.2/8000) / (1 − 1.2/1329) = 1.00075: 94.42 kg.
    // Three barrels: 283.3 kg. (Air 1.2 and weights 8000 kg/m³: OIML D 28.)
    holds(text, "Made 283.3 ");
    holds(text, kept + " 1932-03-14", "amber 66.9 94.4 94.4");
    holds(text, drawn + " 1932-03-14", "amber 66.9 94.4 0.0");
    holds(text, "1932-06-20 " + lot + " amber");
    // 100 canned, 2 sold, 1 found missing; jars of earlier years may stand beside them
    holds(text, lot + " packed 1932-06-20 1932 amber 66.9 97", "Cool room PT amber");
    holds(text, "farm 1 2 30.00 USD", "bulk 488.80 USD"); // 2 × 15; 208 × 2.35
    holds(text, "1932-05-12 " + sold, "208 lb 488.80 USD no. 1");
    holds(text, "Cool room PT " + lot + " 98 97");
    holds(text, "sale 1932-08-01 1932 Typed twice, [U+82F9][U+679C]");
    holds(text, "page 1 of " + Page.pages(pdf), "page 3 of " + Page.pages(pdf));
    assertFalse(text.contains("Thistledown"), "buyers stand by number");
    assertEquals(text.replaceAll("Drawn on .{20}|stood at .{20}", ""), again(), "drawn twice");
    SoundBook.check();
  }

  private static String again() throws Exception {
    return Page.text(pdf(YEAR))
        .replaceAll("\\s+", " ")
        .replaceAll("Drawn on .{20}|stood at .{20}", "");
  }

  @Test
  void the_running_year_names_no_recipient_and_no_buyer() throws Exception {
    String box =
        posts(
                "/api/gift-boxes",
                "{'name': 'Season book box', 'price': {'amount': 22.00, 'currency': 'USD'}, 'contents': [{'container': 'HP', 'grade': 'amber', 'count': 1}]}")
            .statusCode(201)
            .extract()
            .path("id");
    posts(
            "/api/gift-orders",
            """
            {'buyer': {'name': 'Hesperid Quennell'},
             'recipients': [{'name': 'Ottoline Quarrelworth', 'address': {'lines': ['4 Tarnwater Lane'],
                'town': 'Fernby', 'region': 'VT', 'postcode': '05999', 'country': 'US'},
              'box': '%s', 'count': 1, 'delivery': 'by-hand', 'sendBy': '2999-12-17'}]}
            """
                .formatted(box))
        .statusCode(201);
    String text = Page.text(pdf(java.time.Year.now().getValue())).replaceAll("\\s+", " ");
    holds(text, "Gift orders", "confirmed 1");
    for (String private_ : new String[] {"Quennell", "Quarrelworth", "Tarnwater"}) {
      assertFalse(text.contains(private_), private_);
    }
  }

  @ParameterizedTest(name = "{0} is refused with {1} {2}")
  @CsvSource({
    "season=1931,404,unknown-year,",
    "season=2998,404,unknown-year,",
    "season=1899,400,invalid-field,season",
    "season=3000,400,invalid-field,season",
    "season=-2026,400,invalid-field,season",
    "season=20266,400,invalid-field,season",
    "season=twenty,400,invalid-field,season",
    "season=,400,invalid-field,season",
    "paper=a4,400,invalid-field,season",
    "season=2998&paper=a5,400,invalid-field,paper"
  })
  void what_there_is_no_book_of_is_refused_and_nothing_kept(
      String query, int status, String code, String field) {
    Map<String, String> before = rows.fingerprint();
    var answer =
        asks()
            .get("/api/season-book.pdf?" + query)
            .then()
            .statusCode(status)
            .contentType("application/problem+json")
            .body("code", equalTo(code));
    if (field != null) {
      answer.body("errors.field", hasItem(field));
    }
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void only_the_owner_draws_it() {
    String packer = people.with("packing", "books and more books");
    io.restassured.RestAssured.given()
        .auth()
        .preemptive()
        .basic(packer, "books and more books")
        .get(BOOK + java.time.Year.now().getValue())
        .then()
        .statusCode(403);
  }

  private static byte[] pdf(int year) {
    return reads(BOOK + year).contentType("application/pdf").extract().asByteArray();
  }

  private static void holds(String text, String... parts) {
    for (String part : parts) {
      assertTrue(text.contains(part), part + " is not in: " + text);
    }
  }

  private static String filled(String prefix) {
    String tag = newTag(prefix);
    posts("/api/barrels", barrel(tag, YEAR, YEAR + "-03-14", 250, 42, 66.9, 62)).statusCode(201);
    return tag;
  }

  private static String canned(String barrel) {
    return posts(
            "/api/canning/runs",
            """
            {'on': '1932-06-20', 'draws': [{'barrel': '%s', 'all': true}],
             'fillTemperature': {'value': 186, 'unit': 'degF'},
             'fills': [{'container': 'PT', 'count': 100}], 'transmittance': 59, 'taste': 'clean'}
            """
                .formatted(barrel))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  private static String sells(String lot, int count) {
    return posts(
            "/api/sales",
            "{'channel': 'farm', 'at': '1932-08-01T15:00:00Z', 'lines': [{'container': 'PT', 'lot': '%s', 'count': %d, 'price': {'amount': 15, 'currency': 'USD'}}], 'paid': {}}"
                .formatted(lot, count))
        .statusCode(201)
        .extract()
        .path("id");
  }
}
