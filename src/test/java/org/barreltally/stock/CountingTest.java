package org.barreltally.stock;

import static org.barreltally.stock.ShelfFixture.get;
import static org.barreltally.stock.ShelfFixture.post;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
class CountingTest {

  private static final String COUNTS = "/api/stock/counts";

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void the_book_follows_what_is_short_and_what_is_over() {
    String few = shelf.lotWith(24, "PT");
    String many = shelf.lotWith(24, "PT");
    String right = shelf.lotWith(24, "PT", "HP");

    String movement =
        post(COUNTS, count(line("PT", few, 21), line("PT", many, 25), line("PT", right, 24)))
            .statusCode(201)
            .body("differences", hasSize(2))
            .body("differences[0].lot", equalTo(few))
            .body("differences[0].book", equalTo(24))
            .body("differences[0].counted", equalTo(21))
            .body("differences[0].suspectedSwap", nullValue())
            .extract()
            .path("movement");

    assertEquals(21, shelf.standing("cool-room", few, "PT"));
    assertEquals(3, shelf.standing("unexplained", few, "PT"));
    assertEquals(25, shelf.standing("cool-room", many, "PT"));
    assertEquals(-1, shelf.standing("unexplained", many, "PT"));
    assertEquals(24, shelf.standing("cool-room", right, "HP"), "not counted, not touched");
    get("/api/movements/" + movement)
        .body("kind", equalTo("count"))
        .body("entries", hasSize(4))
        .body("happenedAt", equalTo("2024-07-01T16:30:00Z"));
    assertFalse(shelf.isHeld(few));
  }

  @Test
  void a_right_count_moves_nothing_and_is_kept() {
    String lot = shelf.lotWith(24, "PT");
    String id =
        post(COUNTS, count(line("PT", lot, 24)))
            .statusCode(201)
            .body("differences", hasSize(0))
            .body("movement", nullValue())
            .body("by", nullValue())
            .extract()
            .path("id");

    get(COUNTS + "/" + id)
        .statusCode(200)
        .body("by", equalTo("Orla"))
        .body("place", equalTo("cool-room"))
        .body("lines", hasSize(1))
        .body("lines[0].book", equalTo(24))
        .body("lines[0].counted", equalTo(24));
  }

  @Test
  void mixed_up_labels_hold_both_lots_and_are_not_posted() {
    String over = shelf.lotWith(24, "PT");
    String under = shelf.lotWith(24, "PT");
    String short2 = shelf.lotWith(24, "PT");

    post(COUNTS, count(line("PT", over, 30), line("PT", under, 18), line("PT", short2, 22)))
        .statusCode(201)
        .body("differences", hasSize(3))
        .body("differences[0].suspectedSwap", equalTo(under))
        .body("differences[1].suspectedSwap", equalTo(over))
        .body("differences[2].suspectedSwap", nullValue())
        .body("movement", notNullValue());

    assertEquals(24, shelf.standing("cool-room", over, "PT"));
    assertEquals(24, shelf.standing("cool-room", under, "PT"));
    assertEquals(22, shelf.standing("cool-room", short2, "PT"));
    assertTrue(shelf.isHeld(over) && shelf.isHeld(under));
    assertFalse(shelf.isHeld(short2));
    assertEquals(
        2,
        shelf.number(
            "SELECT count(*) FROM lot_holds WHERE reason LIKE '%6 × PT%' AND lot IN ('"
                + over
                + "', '"
                + under
                + "')"));
  }

  @Test
  void a_lot_that_was_never_there_may_be_found_there() {
    String lot = shelf.lotWith(24, "PT");
    post(COUNTS, count(line("PT", lot, 2)).replace("cool-room", "barrel-room"))
        .statusCode(201)
        .body("differences[0].book", equalTo(0))
        .body("differences[0].counted", equalTo(2));
    assertEquals(2, shelf.standing("barrel-room", lot, "PT"));
    assertEquals(24, shelf.standing("cool-room", lot, "PT"));
  }

  @Test
  void a_held_lot_may_be_counted() {
    String lot = shelf.lotWith(24, "PT");
    post("/api/lots/" + lot + "/hold", "{\"reason\": \"Cloudy\"}").statusCode(200);
    post(COUNTS, count(line("PT", lot, 20))).statusCode(201);
    assertEquals(20, shelf.standing("cool-room", lot, "PT"));
  }

  @Test
  void a_count_said_twice_is_kept_once() {
    String lot = shelf.lotWith(24, "PT");
    UUID key = UUID.randomUUID();
    String first = post(COUNTS, count(line("PT", lot, 20)), key).extract().asString();
    String again = post(COUNTS, count(line("PT", lot, 20)), key).extract().asString();
    assertEquals(first, again);
    assertEquals(20, shelf.standing("cool-room", lot, "PT"));
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        refused("cool-room", "moon", 400, "unknown-place", "place"),
        refused("cool-room", "unexplained", 400, "unknown-place", "place"),
        refused("2024-07-01T16:30:00Z", "2999-07-01T16:30:00Z", 400, "in-the-future", "countedAt"),
        refused("2024-07-01T16:30:00Z", "1066-07-01T16:30:00Z", 400, "invalid-field", "countedAt"),
        refused("\"2024-07-01T16:30:00Z\"", "null", 400, "invalid-field", "countedAt"),
        refused("\"Orla\"", "\"\"", 400, "invalid-field", "by"),
        refused("Orla", "x".repeat(81), 400, "invalid-field", "by"),
        refused("PT", "PINT", 400, "unknown-container", "lines[0].container"),
        refused("PT", "QT", 422, "no-such-jars", "lines[0].container"),
        refused("LOT", "NO-LOT", 400, "unknown-lot", "lines[0].lot"),
        refused("\"count\": 24", "\"count\": -1", 400, "invalid-field", "lines[0].count"),
        refused("\"count\": 24", "\"count\": 1000001", 400, "invalid-field", "lines[0].count"),
        refused("\"count\": 24", "\"count\": null", 400, "invalid-field", "lines[0].count"),
        refused("{\"container\"", "null, {\"container\"", 400, "invalid-field", "lines[0]"),
        refused("lines\": [", "lines\": [], \"line\": [", 400, "unknown-field", "line"));
  }

  private static Arguments refused(String was, String is, int status, String code, String field) {
    return Arguments.of(was, is, status, code, field);
  }

  @ParameterizedTest(name = "{1}: {3}")
  @MethodSource("refused")
  void what_is_no_count_is_refused_by_name_and_leaves_nothing(
      String was, String is, int status, String code, String field) {
    String lot = shelf.lotWith(24, "PT");
    String wrong =
        count(line("PT", "LOT", 24)).replace(was, is).replace("\"LOT\"", "\"" + lot + "\"");
    String before = shelf.traces();

    post(COUNTS, wrong)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field));

    assertEquals(before, shelf.traces());
  }

  @Test
  void the_same_jars_in_two_lines_are_refused() {
    String lot = shelf.lotWith(24, "PT");
    post(COUNTS, count(line("PT", lot, 20), line("PT", lot, 4)))
        .statusCode(400)
        .body("code", equalTo("counted-twice"))
        .body("errors[0].field", equalTo("lines[1]"));
  }

  @Test
  void no_lines_and_too_many_lines_are_refused() {
    post(COUNTS, count())
        .statusCode(400)
        .body("errors[0].field", equalTo("lines"))
        .body("errors[0].message", containsString("at least one line"));
    String[] many =
        IntStream.range(0, 2001).mapToObj(n -> line("PT", "L" + n, 1)).toArray(String[]::new);
    post(COUNTS, count(many))
        .statusCode(400)
        .body("errors[0].field", equalTo("lines"))
        .body("errors[0].message", containsString("2,000"));
  }

  @Test
  void an_unknown_count_is_not_found() {
    get(COUNTS + "/" + UUID.randomUUID()).statusCode(404).body("code", equalTo("unknown-count"));
  }

  /**
   * Counts of a shelf that is right, while jars are carried off it: whatever the order, what stands
   * in both rooms and what is unexplained add up to what there was.
   */
  @Test
  void nobody_slips_in_between_comparing_and_posting() throws Exception {
    String lot = shelf.lotWith(40, "PT");
    String other = shelf.lotWith(40, "PT");
    List<Callable<Integer>> requests = new ArrayList<>();
    for (int n = 0; n < 12; n++) {
      String carried = n % 2 == 0 ? lot : other;
      requests.add(
          () ->
              post(
                      "/api/stock/relocations",
                      """
                      {"from": "cool-room", "to": "barrel-room", "container": "PT",
                       "lot": "%s", "count": 1, "reason": "Shelf repaired"}"""
                          .formatted(carried))
                  .extract()
                  .statusCode());
      requests.add(
          () ->
              post(COUNTS, count(line("PT", lot, 30), line("PT", other, 33)))
                  .extract()
                  .statusCode());
    }
    ExecutorService threads = Executors.newFixedThreadPool(requests.size());
    List<Integer> answers = new ArrayList<>();
    for (Future<Integer> answer : threads.invokeAll(requests)) {
      answers.add(answer.get());
    }
    threads.shutdown();

    assertEquals(List.of(201), answers.stream().distinct().toList());
    for (String each : List.of(lot, other)) {
      assertEquals(6, shelf.standing("barrel-room", each, "PT"));
      assertEquals(
          40,
          shelf.standing("cool-room", each, "PT")
              + shelf.standing("barrel-room", each, "PT")
              + shelf.standing("unexplained", each, "PT"));
    }
    // Every count found its own book: what it posted is what it said was off.
    assertEquals(
        shelf.number(
            "SELECT sum(l.counted - l.book) FROM stock_count_lines l WHERE l.lot = '"
                + lot
                + "'"
                + " AND swap_with IS NULL"),
        -shelf.standing("unexplained", lot, "PT"));
  }

  private static String line(String container, String lot, int count) {
    return "{\"container\": \"%s\", \"lot\": \"%s\", \"count\": %d}"
        .formatted(container, lot, count);
  }

  private static String count(String... lines) {
    return "{\"place\": \"cool-room\", \"countedAt\": \"%s\", \"by\": \"Orla\", \"lines\": [%s]}"
        .formatted(
            Instant.parse("2024-07-01T16:30:00Z"),
            Stream.of(lines).collect(Collectors.joining(", ")));
  }
}
