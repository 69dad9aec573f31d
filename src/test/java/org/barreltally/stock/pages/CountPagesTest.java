package org.barreltally.stock.pages;

import static org.barreltally.PageReader.page;
import static org.barreltally.PageReader.sentTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.barreltally.Figures;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.stock.ShelfFixture;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Counting on pages: blind until both agree, then beside the book, then posted. */
@QuarkusTest
class CountPagesTest {

  private static final String BOOK = "7319";

  @Inject ShelfFixture shelf;

  private PageReader owner;
  private String room;
  private String lot;

  @BeforeEach
  void a_room_with_jars_of_one_lot() {
    room = shelf.room();
    lot = shelf.lotWith(8000, "PT");
    Owner.posts(
            "/api/stock/relocations",
            "{'from': 'cool-room', 'to': '%s', 'container': 'PT', 'lot': '%s', 'count': %s, 'reason': 'tried'}"
                .formatted(room, lot, BOOK))
        .statusCode(201);
    owner = PageReader.owner();
  }

  @Test
  void a_round_from_the_first_sheet_to_the_posting() {
    String round = sentTo(owner.sends(owner.reads("/counts"), "/counts", "place", room));
    assertBlind(round);
    count(round, "Orla", "7300");

    Document refused =
        page(
            owner.sends(
                owner.reads(round + "/sheet"),
                round + "/sheet",
                "by",
                "Orla",
                "lines[0].count",
                "7310"),
            422);
    assertTrue(refused.select("#f-by-message").text().contains("Orla"), refused.text());
    assertEquals("7310", refused.select("input.count").first().val());

    assertBlind(round);
    count(round, "Fenwick", "7310");
    assertTrue(owner.reads(round).text().contains("PT, lot " + lot), "what is to be recounted");
    assertBlind(round);
    assertEquals(
        409, io.restassured.RestAssured.given().spec(cookie(round + "/post")).get().statusCode());
    count(round, "both", "7310");

    Document off = owner.reads(round + "/post");
    assertEquals(
        List.of(BOOK, "7310", "-9"),
        off.select("tbody td.number").eachText().stream().map(t -> t.replace(",", "")).toList());
    String posted = sentTo(owner.sends(off, round + "/post", "causes[0].cause", "broken"));
    assertTrue(owner.reads(posted).select("tbody tr").text().endsWith("broken"));
    assertEquals(7310, shelf.standing(room, lot, "PT"));
    shelf.assertBookIsWhole();
  }

  @Test
  void a_line_left_blank_on_a_sheet_is_asked_for() {
    String round = sentTo(owner.sends(owner.reads("/counts"), "/counts", "place", room));
    Document refused =
        page(owner.sends(owner.reads(round + "/sheet"), round + "/sheet", "by", "Orla"), 400);
    assertTrue(refused.select("tr.wrong .message").text().contains("whole number"));
  }

  @Test
  void a_round_can_be_given_up_with_a_reason() {
    String round = sentTo(owner.sends(owner.reads("/counts"), "/counts", "place", room));
    page(owner.sends(owner.reads(round), round + "/give-up"), 400);
    sentTo(owner.sends(owner.reads(round), round + "/give-up", "reason", "Customers came"));
    Document over = owner.reads(round);
    assertTrue(over.text().contains("Customers came"));
    assertEquals(0, over.select("main form").size());
  }

  @Test
  void a_plain_count_compares_the_lines_filled_in_and_shows_no_book_before() {
    String other = shelf.lotWith(5, "QT");
    Owner.posts(
            "/api/stock/relocations",
            "{'from': 'cool-room', 'to': '%s', 'container': 'QT', 'lot': '%s', 'count': 5, 'reason': 'tried'}"
                .formatted(room, other))
        .statusCode(201);
    Document sheet = owner.reads("/counts/plain?place=" + room);
    assertFalse(Figures.shows(sheet.html(), BOOK), sheet.text());
    String line =
        sheet.selectFirst("input[type=hidden][value=" + lot + "]").attr("name").replace(".lot", "");
    Document refused =
        page(owner.sends(sheet, "/counts/plain", line + ".count", "some", "by", "Orla"), 400);
    assertEquals(2, refused.select("input[type=hidden][name$=.given]").size());
    String posted =
        sentTo(owner.sends(sheet, "/counts/plain", line + ".count", "7320", "by", "Orla"));
    Document done = owner.reads(posted);
    assertEquals(1, done.select("tbody tr").size());
    assertEquals(7320, shelf.standing(room, lot, "PT"));
    assertEquals(5, shelf.standing(room, other, "QT"));
  }

  private void count(String round, String by, String pieces) {
    Document sheet = owner.reads(round + "/sheet");
    sentTo(owner.sends(sheet, round + "/sheet", "by", by, "lines[0].count", pieces));
  }

  /** Neither the round nor its sheet shows what the book or an earlier counter has. */
  private void assertBlind(String round) {
    for (String address : List.of(round, round + "/sheet")) {
      String html = owner.reads(address).html();
      for (String figure : List.of(BOOK, "7300", "7310")) {
        assertFalse(Figures.shows(html, figure), address + " shows " + figure);
      }
    }
  }

  private io.restassured.specification.RequestSpecification cookie(String path) {
    return new io.restassured.builder.RequestSpecBuilder()
        .setBasePath(path)
        .addCookie("barreltally-session", owner.session())
        .build();
  }
}
