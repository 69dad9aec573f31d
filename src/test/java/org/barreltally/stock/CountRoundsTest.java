package org.barreltally.stock;

import static org.barreltally.stock.ShelfFixture.get;
import static org.barreltally.stock.ShelfFixture.post;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.barreltally.Figures;
import org.barreltally.documents.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two people count a room of their own without seeing the book or each other. */
@QuarkusTest
class CountRoundsTest {

  @Inject ShelfFixture shelf;

  private String room;
  private String pints;
  private String others;

  @BeforeEach
  void a_room_with_two_lots() {
    room = shelf.room();
    pints = shelf.lotWith(100, "PT");
    others = shelf.lotWith(50, "PT");
    carry(pints, 100);
    carry(others, 50);
  }

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void what_differs_is_counted_again_and_the_book_follows_with_its_cause() {
    String round = open();
    sheet(round, "Orla", line(pints, 98), line(others, 50))
        .statusCode(201)
        .body("state", equalTo("second"))
        .body("toRecount.size()", equalTo(0));
    ValidatableResponse second =
        sheet(round, "Piet", line(pints, 97), line(others, 50))
            .statusCode(201)
            .body("state", equalTo("recount"))
            .body("toRecount.lot", contains(pints));
    String told = second.extract().asString();
    for (String figure : List.of("97", "98", "100")) {
      assertFalse(Figures.shows(told, figure), figure + " before it is posted: " + told);
    }
    refused(round + "/posting", "{}", 409, "not-agreed-yet");
    sheet(round, "Orla", line(pints, 98)).statusCode(201).body("state", equalTo("agreed"));

    // A jar is carried away after the count and before the posting: it is not missing.
    post(
            "/api/stock/relocations",
            "{\"from\": \"%s\", \"to\": \"cool-room\", \"container\": \"PT\", \"lot\": \"%s\", \"count\": 5, \"reason\": \"To the gate\"}"
                .formatted(room, pints))
        .statusCode(201);
    String movement =
        post(
                round + "/posting",
                "{\"causes\": [{\"container\": \"PT\", \"lot\": \"%s\", \"cause\": \"broken\"}]}"
                    .formatted(pints))
            .statusCode(201)
            .body("differences.size()", equalTo(1))
            .body("differences[0].book", equalTo(100))
            .body("differences[0].counted", equalTo(98))
            .body("differences[0].cause", equalTo("broken"))
            .extract()
            .path("movement");
    assertEquals(93, shelf.standing(room, pints, "PT"));
    get("/api/movements/" + movement)
        .body("kind", equalTo("count"))
        .body("entries.place", hasItem("broken"))
        .body("canBeTakenBack", equalTo(true));
    get(round).body("state", equalTo("posted"));
    refused(round + "/posting", "{}", 409, "round-over");
    refused(round + "/giving-up", "{\"reason\": \"Late\"}", 409, "round-over");
  }

  @Test
  void a_mislabelled_case_is_held_and_a_lot_that_was_never_there_is_flagged() {
    String stranger = shelf.lotWith(10, "PT");
    String round = open();
    for (String by : List.of("Orla", "Piet")) {
      sheet(round, by, line(pints, 88), line(others, 62), line(stranger, 3)).statusCode(201);
    }
    post(round + "/posting", "{}")
        .statusCode(201)
        .body("differences.size()", equalTo(3))
        .body("differences.find { it.lot == '" + pints + "' }.suspectedSwap", equalTo(others))
        .body("differences.find { it.lot == '" + stranger + "' }.neverThere", equalTo(true))
        .body("differences.find { it.lot == '" + pints + "' }.neverThere", equalTo(null));
    assertTrue(shelf.isHeld(pints) && shelf.isHeld(others) && !shelf.isHeld(stranger));
    assertEquals(3, shelf.standing(room, stranger, "PT"));
    assertEquals(100, shelf.standing(room, pints, "PT"));
  }

  @Test
  void the_sheet_names_lots_and_no_figure_of_the_book() throws Exception {
    byte[] pdf =
        ShelfFixture.asOwner().get("/api/stock/count-sheet.pdf?place=" + room).asByteArray();
    String text = Page.text(pdf);
    for (String word : List.of(pints, others, "First counter", "Second counter", "Glass", "PT")) {
      assertTrue(text.contains(word), word + " in " + text);
    }
    assertFalse(Figures.shows(text, "100") || Figures.shows(text, "50"), text);
    ShelfFixture.asOwner()
        .get("/api/stock/count-sheet.pdf?place=nowhere")
        .then()
        .statusCode(400)
        .body("code", equalTo("unknown-place"));
  }

  @Test
  void what_a_round_does_not_take_is_refused_and_leaves_nothing() {
    String round = open();
    String before = shelf.traces();
    post("/api/stock/count-rounds", "{\"place\": \"%s\"}".formatted(room))
        .statusCode(409)
        .body("code", equalTo("round-under-way"));
    post("/api/stock/count-rounds", "{\"place\": \"customer\"}")
        .statusCode(400)
        .body("code", equalTo("unknown-place"));
    refused(round + "/posting", "{}", 409, "not-agreed-yet");
    sheetRefused(round, "Orla", 400, "unknown-lot", line("NO-LOT", 1));
    sheetRefused(round, "Orla", 400, "counted-twice", line(pints, 1), line(pints, 2));
    refused(
        "/api/stock/count-rounds/" + UUID.randomUUID() + "/posting", "{}", 404, "unknown-round");
    assertEquals(before, shelf.traces());
    sheet(round, "Orla", line(pints, 100)).statusCode(201);
    sheetRefused(round, "orla", 422, "same-counter", line(pints, 100));
    sheet(round, "Piet", line(pints, 99)).statusCode(201);
    sheetRefused(round, "Ada", 422, "recount-incomplete", line(others, 50));
    sheet(round, "Ada", line(pints, 100)).statusCode(201);
    refused(
        round + "/posting",
        "{\"causes\": [{\"container\": \"PT\", \"lot\": \"%s\", \"cause\": \"broken\"}]}"
            .formatted(pints),
        422,
        "nothing-short");
    sheetRefused(round, "Ada", 409, "round-over", line(pints, 100));
    post(round + "/giving-up", "{\"reason\": \"Lights went out\"}")
        .statusCode(200)
        .body("state", equalTo("given-up"));
  }

  private String open() {
    return "/api/stock/count-rounds/"
        + post("/api/stock/count-rounds", "{\"place\": \"%s\"}".formatted(room))
            .statusCode(201)
            .body("state", equalTo("first"))
            .extract()
            .path("id");
  }

  private void carry(String lot, int count) {
    post(
            "/api/stock/relocations",
            "{\"from\": \"cool-room\", \"to\": \"%s\", \"container\": \"PT\", \"lot\": \"%s\", \"count\": %d, \"reason\": \"Shelved\"}"
                .formatted(room, lot, count))
        .statusCode(201);
  }

  private static String line(String lot, int count) {
    return "{\"container\": \"PT\", \"lot\": \"%s\", \"count\": %d}".formatted(lot, count);
  }

  private static ValidatableResponse sheet(String round, String by, String... lines) {
    return post(
        round + "/sheets",
        "{\"by\": \"%s\", \"lines\": [%s]}".formatted(by, String.join(", ", lines)));
  }

  private static void sheetRefused(
      String round, String by, int status, String code, String... lines) {
    sheet(round, by, lines).statusCode(status).body("code", equalTo(code));
  }

  private static void refused(String path, String json, int status, String code) {
    post(path, json).statusCode(status).body("code", equalTo(code));
  }
}
