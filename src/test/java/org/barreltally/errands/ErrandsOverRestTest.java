package org.barreltally.errands;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.barreltally.people.PersonFixture;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work that takes a while is asked for, left, and found again. */
@QuarkusTest
class ErrandsOverRestTest {

  private static final String PASSWORD = "while I go on boiling";

  @Inject PersonFixture people;
  @Inject ShelfFixture shelf;
  @Inject BookRows rows;
  @Inject EntityManager entities;

  @AfterEach
  void the_book_is_sound() {
    SoundBook.check();
  }

  /** Waits until an errand has ended. */
  private static JsonPath ended(String address) throws InterruptedException {
    long end = System.nanoTime() + Duration.ofSeconds(60).toNanos();
    while (true) {
      JsonPath errand = reads(address).extract().jsonPath();
      if (!errand.getString("state").matches("waiting|at-work")) {
        return errand;
      }
      assertTrue(System.nanoTime() < end, "never ended: " + errand.prettify());
      Thread.sleep(50);
    }
  }

  private static String asked(String kind, String json) {
    String address =
        posts("/api/errands/" + kind, json).statusCode(202).extract().header("Location");
    return address.replaceFirst("^http://[^/]+", "");
  }

  private static byte[] paper(JsonPath errand) {
    return Owner.asks()
        .get(errand.getString("paper"))
        .then()
        .statusCode(200)
        .contentType("application/pdf")
        .extract()
        .asByteArray();
  }

  @Test
  void the_book_of_a_season_is_drawn_chapter_by_chapter() throws Exception {
    String address = asked("season-book", "{\"season\": " + LocalDate.now().getYear() + "}");
    JsonPath errand = ended(address);
    assertEquals("done", errand.getString("state"), errand.prettify());
    assertTrue(errand.getInt("steps") > 10, errand.prettify());
    assertEquals(errand.getInt("steps"), errand.getInt("stepsDone"));
    try (PDDocument book = Loader.loadPDF(paper(errand))) {
      assertTrue(book.getNumberOfPages() > 2);
    }
    reads("/api/errands?limit=100").body("items.id", hasItem(errand.getString("id")));
  }

  @Test
  void ten_thousand_labels_are_a_thousand_sheets() throws Exception {
    String lot = shelf.lotWith(3, "PT");
    JsonPath errand =
        ended(asked("labels", "{'lot': '%s', 'container': 'PT', 'count': 10000}".formatted(lot)));
    assertEquals("done", errand.getString("state"), errand.prettify());
    assertEquals(10_000, errand.getInt("steps"));
    try (PDDocument labels = Loader.loadPDF(paper(errand))) {
      assertEquals(1_000, labels.getNumberOfPages());
    }
  }

  @Test
  void a_file_of_opening_stock_is_entered_whole_or_not_at_all() throws Exception {
    String tag = Owner.newTag("OE");
    String file =
        "kind,tag,season,filledOn,material,gross,tare,brix,transmittance,taste\\n"
            + "barrel,%1$s,2025,2025-03-22,stainless,486.5 lb,42 lb,66.9,62,clean\\n"
            + "barrel,%1$sb,2025,2025-03-22,%2$s,486.5 lb,42 lb,66.9,62,clean\\n";
    JsonPath refused =
        ended(asked("opening-stock", "{'file': '%s'}".formatted(file.formatted(tag, "tin"))));
    assertEquals("refused", refused.getString("state"));
    assertEquals("line 3, column material", refused.getString("problem.errors[0].field"));
    Owner.asks().get("/api/barrels/" + tag).then().statusCode(404);
    JsonPath entered =
        ended(asked("opening-stock", "{'file': '%s'}".formatted(file.formatted(tag, "plastic"))));
    assertEquals("done", entered.getString("state"), entered.prettify());
    assertEquals("/stock", entered.getString("leadsTo"));
    assertEquals(2, entered.getInt("stepsDone"));
    reads("/api/barrels/" + tag + "b").body("material", equalTo("plastic"));
  }

  @Test
  void the_same_id_asks_once() throws Exception {
    UUID id = UUID.randomUUID();
    String json = "{\"season\": " + LocalDate.now().getYear() + "}";
    String first = posts("/api/errands/season-book", json, id).statusCode(202).extract().path("id");
    posts("/api/errands/season-book", json, id).statusCode(202).body("id", equalTo(first));
    assertEquals(1, rows.number("SELECT count(*) FROM errands WHERE id = '" + first + "'"));
    ended("/api/errands/" + first);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "season-book | {} | season",
        "season-book | {'season': 1066} | ",
        "season-book | {'season': 2026, 'paper': 'folio'} | paper",
        "labels | {} | lot",
        "labels | {'lot': 'NONE-1', 'container': 'PT', 'count': 10001} | count",
        "opening-stock | {} | file",
        "gift-recipients | {'file': ' '} | file",
        "gift-recipients | {'file': 'name\\nx'} | line 1, column box",
      })
  void what_would_be_refused_at_once_is_refused_later(String kind, String json, String field)
      throws Exception {
    JsonPath errand = ended(asked(kind, json));
    assertEquals("refused", errand.getString("state"), errand.prettify());
    assertTrue(errand.getString("problem.detail").length() > 10);
    assertEquals(field, errand.getString("problem.errors[0].field"), errand.prettify());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "nothing-of-the-kind | {} | 404",
        "season-book | {'seeson': 2026} | 400",
        "season-book | {'season': '2026'} | 400",
        "season-book | [] | 400",
      })
  void what_cannot_be_read_is_refused_at_once(String kind, String json, int status) {
    long before = rows.number("SELECT count(*) FROM errands");
    posts("/api/errands/" + kind, json).statusCode(status);
    assertEquals(before, rows.number("SELECT count(*) FROM errands"));
  }

  private RequestSpecification as(String role) {
    return given().auth().preemptive().basic(people.with(role, PASSWORD), PASSWORD);
  }

  @Test
  void others_see_nothing_of_it_and_ask_for_their_own_part_only() throws Exception {
    RequestSpecification packing = as("packing");
    String mine =
        packing
            .header("Idempotency-Key", UUID.randomUUID())
            .contentType("application/json")
            .body(Map.of("buyer", "Nobody yet", "file", "name\nx"))
            .post("/api/errands/gift-recipients")
            .then()
            .statusCode(202)
            .extract()
            .path("id");
    ended("/api/errands/" + mine); // the owner sees it
    as("canning").get("/api/errands/" + mine).then().statusCode(404);
    as("canning").get("/api/errands").then().statusCode(200).body("items.id", not(hasItem(mine)));
    as("packing")
        .header("Idempotency-Key", UUID.randomUUID())
        .contentType("application/json")
        .body(Map.of("season", 2026))
        .post("/api/errands/season-book")
        .then()
        .statusCode(403);
    Owner.asks().get("/api/errands/" + mine + "/paper").then().statusCode(404);
    Owner.asks().get("/api/errands/" + UUID.randomUUID()).then().statusCode(404);
  }

  private void does(String sql) {
    QuarkusTransaction.requiringNew().run(() -> entities.createNativeQuery(sql).executeUpdate());
  }

  @Test
  void what_nobody_has_heard_of_for_a_minute_is_broken_off_and_after_two_days_forgotten() {
    String id = UUID.randomUUID().toString();
    String add =
        "INSERT INTO errands (id, kind, asked_by, asked_at, state, seen_at) SELECT '%s', 'season-book', id,"
            + " now() - interval '%s', 'at-work', now() - interval '%s' FROM users WHERE name = 'owner'";
    does(add.formatted(id, "10 minutes", "30 seconds"));
    reads("/api/errands/" + id).body("state", equalTo("at-work"));
    does("UPDATE errands SET seen_at = now() - interval '61 seconds' WHERE id = '" + id + "'");
    reads("/api/errands/" + id)
        .body("state", startsWith("broken-off"))
        .body("endedAt", nullValue());
    does("UPDATE errands SET asked_at = now() - interval '49 hours' WHERE id = '" + id + "'");
    Owner.asks().get("/api/errands/" + id).then().statusCode(404);
  }
}
