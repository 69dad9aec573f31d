package org.barreltally.errands;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.barreltally.stock.ShelfFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Long work on pages, without any script. */
@QuarkusTest
class ErrandPagesTest {

  @Inject ShelfFixture shelf;
  @Inject PersonFixture people;

  private PageReader owner;
  private int year;

  @BeforeEach
  void sign_in() {
    owner = PageReader.owner();
    shelf.lotWith(1, "PT"); // so that the book has a year
    year = Owner.reads("/api/years").extract().path("items[0].year");
  }

  private static String address(Response sent) {
    assertEquals(303, sent.statusCode(), sent.asString());
    return sent.header("Location").replaceFirst("^http://[^/]+", "");
  }

  /** Looks again as the page's Refresh says, until it says so no more. */
  private Document ended(String page) throws InterruptedException {
    long end = System.nanoTime() + Duration.ofSeconds(60).toNanos();
    while (true) {
      Response answer = given().cookie("barreltally-session", owner.session()).get(page);
      assertEquals(200, answer.statusCode());
      if (answer.header("Refresh") == null) {
        return Jsoup.parse(answer.asString());
      }
      assertEquals("2", answer.header("Refresh"));
      assertTrue(System.nanoTime() < end, answer.asString());
      Thread.sleep(100);
    }
  }

  @Test
  void a_season_s_book_is_asked_for_left_and_found_again() throws Exception {
    Document page = owner.reads("/years/" + year);
    String work = address(owner.sends(page, "/errands/season-book"));
    assertNotNull(
        owner.reads("/errands").selectFirst("main a[href=" + work + "]"), "found in the list");
    Document ended = ended(work);
    assertEquals("Done", ended.selectFirst("main [role=status]").text());
    String paper = ended.selectFirst("main ul.links a").attr("href");
    given()
        .cookie("barreltally-session", owner.session())
        .get(paper)
        .then()
        .statusCode(200)
        .contentType("application/pdf");
  }

  @Test
  void the_second_click_is_the_same_piece_of_work() {
    Document page = owner.reads("/years/" + year);
    String first = address(owner.sends(page, "/errands/season-book"));
    assertEquals(first, address(owner.sends(page, "/errands/season-book")));
  }

  @Test
  void many_labels_are_drawn_while_one_goes_on_and_a_refusal_says_what_to_mend() throws Exception {
    String lot = shelf.lotWith(5, "PT");
    Document labels = owner.reads("/lots/" + lot + "/labels");
    Document done = ended(address(owner.sends(labels, "/errands/labels", "count", "3000")));
    assertEquals("Done", done.selectFirst("main [role=status]").text());
    Document refused = ended(address(again(lot, "20000")));
    assertNull(refused.selectFirst("main [role=status]"));
    assertTrue(refused.selectFirst("main .refusal").text().contains("count: Give how many"));
    Document typo = Jsoup.parse(again(lot, "many").asString());
    assertNotNull(typo.selectFirst("main .refusal"), "what cannot be read comes back at once");
  }

  private Response again(String lot, String count) {
    return owner.sends(owner.reads("/lots/" + lot + "/labels"), "/errands/labels", "count", count);
  }

  @Test
  void opening_stock_comes_from_a_file() throws Exception {
    String tag = Owner.newTag("OP");
    String file =
        "kind,tag,season,filledOn,material,gross,tare,brix,transmittance,taste\n"
            + "barrel,%s,2025,2025-03-22,stainless,486.5 lb,42 lb,66.9,62,clean\n".formatted(tag);
    Document ended = ended(address(uploads(file.getBytes(StandardCharsets.UTF_8))));
    assertEquals("/stock", ended.selectFirst("main ul.links a").attr("href"));
    owner.reads("/barrels/" + tag);
    Response empty = uploads(new byte[0]);
    assertEquals(400, empty.statusCode());
    assertTrue(Jsoup.parse(empty.asString()).selectFirst("#f-file-message").text().contains("CSV"));
    assertEquals(400, uploads(new byte[] {(byte) 0xff, (byte) 0xfe, 0x41}).statusCode());
  }

  private Response uploads(byte[] file) {
    Document form = owner.reads("/opening-stock");
    return given()
        .redirects()
        .follow(false)
        .cookie("barreltally-session", owner.session())
        .multiPart("token", form.selectFirst("main input[name=token]").attr("value"))
        .multiPart("form", form.selectFirst("main input[name=form]").attr("value"))
        .multiPart("file", "opening.csv", file, "text/csv")
        .post("/opening-stock");
  }

  @Test
  void who_may_not_ask_gets_no_form() {
    PageReader table = PageReader.as(people.with("table", "cards and cash"), "cards and cash");
    assertNull(table.reads("/years/" + year).selectFirst("main form[action^=/errands]"));
    assertNull(table.reads("/opening-stock").selectFirst("main form"));
    assertTrue(table.reads("/errands").selectFirst("main .empty").text().contains("two days"));
  }
}
