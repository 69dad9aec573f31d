package org.barreltally.stock;

import static org.barreltally.stock.ShelfFixture.get;
import static org.barreltally.stock.ShelfFixture.post;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
class MovingJarsTest {

  private static final String RELOCATIONS = "/api/stock/relocations";
  private static final String WRITE_OFFS = "/api/stock/write-offs";

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void jars_are_carried_to_another_room_once_however_often_it_is_said() {
    String lot = shelf.lotWith(24, "PT");
    UUID key = UUID.randomUUID();
    String said = relocation(lot, "PT", 10);

    String first =
        post(RELOCATIONS, said, key)
            .statusCode(201)
            .body("kind", equalTo("relocation"))
            .body("entries", hasSize(2))
            .body("entries.place", hasItems("cool-room", "barrel-room"))
            .body("entries.amount", hasItems(10, -10))
            .body("reason", equalTo("Shelf repaired"))
            .extract()
            .asString();
    String again = post(RELOCATIONS, said, key).statusCode(201).extract().asString();

    assertEquals(first, again);
    assertEquals(14, shelf.standing("cool-room", lot, "PT"));
    assertEquals(10, shelf.standing("barrel-room", lot, "PT"));
  }

  @Test
  void written_off_jars_stand_at_their_cause() {
    String lot = shelf.lotWith(24, "PT");
    long before = shelf.standing("sampled", lot, "PT");

    post(WRITE_OFFS, writeOff(lot, "PT", 4, "sampled"))
        .statusCode(201)
        .body("kind", equalTo("write-off"))
        .body("reason", nullValue());

    assertEquals(20, shelf.standing("cool-room", lot, "PT"));
    assertEquals(before + 4, shelf.standing("sampled", lot, "PT"));
  }

  @Test
  void jars_of_a_held_lot_can_be_carried_and_thrown_away() {
    String lot = shelf.lotWith(24, "PT");
    post("/api/lots/" + lot + "/hold", "{\"reason\": \"Cloudy\"}").statusCode(200);

    post(RELOCATIONS, relocation(lot, "PT", 24)).statusCode(201);
    post(WRITE_OFFS, writeOff(lot, "PT", 24, "discarded").replace("cool-room", "barrel-room"))
        .statusCode(201);

    assertEquals(0, shelf.standing("barrel-room", lot, "PT"));
    get("/api/stock?lot=" + lot).statusCode(200).body("items", hasSize(0));
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        refused(
            RELOCATIONS,
            "\"from\": \"cool-room\"",
            "\"from\": \"moon\"",
            400,
            "unknown-place",
            "from"),
        refused(
            RELOCATIONS,
            "\"from\": \"cool-room\"",
            "\"from\": \"broken\"",
            400,
            "unknown-place",
            "from"),
        refused(
            RELOCATIONS, "\"from\": \"cool-room\"", "\"from\": null", 400, "invalid-field", "from"),
        refused(
            RELOCATIONS,
            "\"to\": \"barrel-room\"",
            "\"to\": \"cool-room\"",
            400,
            "invalid-field",
            "to"),
        refused(
            RELOCATIONS,
            "\"to\": \"barrel-room\"",
            "\"to\": \"customer\"",
            400,
            "unknown-place",
            "to"),
        refused(RELOCATIONS, "\"PT\"", "\"PINT\"", 400, "unknown-container", "container"),
        refused(
            RELOCATIONS,
            "\"PT\"",
            "\"" + "P".repeat(5000) + "\"",
            400,
            "invalid-field",
            "container"),
        refused(RELOCATIONS, "\"PT\"", "\"QT\"", 422, "no-such-jars", "container"),
        refused(RELOCATIONS, "LOT", "NO-SUCH-LOT", 400, "unknown-lot", "lot"),
        refused(RELOCATIONS, "\"LOT\"", "\"\"", 400, "invalid-field", "lot"),
        refused(RELOCATIONS, "\"count\": 5", "\"count\": 0", 400, "invalid-field", "count"),
        refused(RELOCATIONS, "\"count\": 5", "\"count\": -5", 400, "invalid-field", "count"),
        refused(RELOCATIONS, "\"count\": 5", "\"count\": 1000001", 400, "invalid-field", "count"),
        refused(
            RELOCATIONS,
            "\"count\": 5",
            "\"count\": 99999999999999999999",
            400,
            "out-of-range",
            "count"),
        refused(RELOCATIONS, "\"count\": 5", "\"count\": 2.5", 400, "wrong-type", "count"),
        refused(RELOCATIONS, "\"count\": 5", "\"count\": \"5\"", 400, "wrong-type", "count"),
        refused(RELOCATIONS, ", \"count\": 5", "", 400, "invalid-field", "count"),
        refused(RELOCATIONS, "\"count\": 5", "\"count\": 25", 409, "short-of-stock", null),
        refused(RELOCATIONS, "\"Shelf repaired\"", "\" \"", 400, "invalid-field", "reason"),
        refused(
            RELOCATIONS,
            "\"Shelf repaired\"",
            "\"" + "x".repeat(5000) + "\"",
            400,
            "invalid-field",
            "reason"),
        refused(RELOCATIONS, "\"count\"", "\"cuont\": 1, \"count\"", 400, "unknown-field", "cuont"),
        refused(WRITE_OFFS, "\"broken\"", "\"eaten\"", 400, "invalid-field", "cause"),
        refused(WRITE_OFFS, ", \"cause\": \"broken\"", "", 400, "invalid-field", "cause"),
        refused(
            WRITE_OFFS,
            "\"place\": \"cool-room\"",
            "\"place\": \"given\"",
            400,
            "unknown-place",
            "place"),
        refused(WRITE_OFFS, "\"count\": 5", "\"count\": 25", 409, "short-of-stock", null),
        refused(WRITE_OFFS, "LOT", "NO-SUCH-LOT", 400, "unknown-lot", "lot"));
  }

  private static Arguments refused(
      String path, String was, String is, int status, String code, String field) {
    return Arguments.of(path, was, is, status, code, field);
  }

  @ParameterizedTest(name = "{0} with {2}: {4}")
  @MethodSource("refused")
  void what_cannot_be_is_refused_by_name_and_leaves_nothing(
      String path, String was, String is, int status, String code, String field) {
    String lot = shelf.lotWith(24, "PT");
    String right =
        path.equals(RELOCATIONS) ? relocation("LOT", "PT", 5) : writeOff("LOT", "PT", 5, "broken");
    String before = shelf.traces();
    String wrong =
        right
            .replace(was, is)
            .replace("LOT\"", lot + "\"")
            .replace("NO-SUCH-" + lot, "NO-SUCH-LOT");

    var answer = post(path, wrong).statusCode(status).body("code", equalTo(code));

    if (field != null) {
      answer.body("errors[0].field", equalTo(field));
    }
    assertEquals(before, shelf.traces());
  }

  @Test
  void a_request_without_an_id_is_refused() {
    String lot = shelf.lotWith(24, "PT");
    ShelfFixture.asOwner()
        .contentType("application/json")
        .body(relocation(lot, "PT", 5))
        .post(RELOCATIONS)
        .then()
        .statusCode(400)
        .body("code", equalTo("id-missing"));
    assertEquals(24, shelf.standing("cool-room", lot, "PT"));
  }

  @Test
  void the_same_id_with_another_count_is_refused() {
    String lot = shelf.lotWith(24, "PT");
    UUID key = UUID.randomUUID();
    post(RELOCATIONS, relocation(lot, "PT", 5), key).statusCode(201);

    post(RELOCATIONS, relocation(lot, "PT", 6), key)
        .statusCode(409)
        .body("code", equalTo("id-reused"));

    assertEquals(19, shelf.standing("cool-room", lot, "PT"));
  }

  @Test
  void the_last_jars_go_to_whoever_comes_first_and_to_nobody_twice() throws Exception {
    int jars = 7;
    int people = 16;
    String lot = shelf.lotWith(jars, "PT");
    ExecutorService threads = Executors.newFixedThreadPool(people);
    List<Callable<Integer>> requests = new ArrayList<>();
    for (int n = 0; n < people; n++) {
      String said = n % 2 == 0 ? relocation(lot, "PT", 1) : writeOff(lot, "PT", 1, "broken");
      String path = n % 2 == 0 ? RELOCATIONS : WRITE_OFFS;
      requests.add(() -> post(path, said).extract().statusCode());
    }
    List<Integer> answers = new ArrayList<>();
    for (Future<Integer> answer : threads.invokeAll(requests)) {
      answers.add(answer.get());
    }
    threads.shutdown();

    assertEquals(jars, answers.stream().filter(status -> status == 201).count());
    assertEquals(people - jars, answers.stream().filter(status -> status == 409).count());
    assertEquals(0, shelf.standing("cool-room", lot, "PT"));
    assertEquals(
        jars, shelf.standing("barrel-room", lot, "PT") + shelf.standing("broken", lot, "PT"));
  }

  @Test
  void a_shortage_says_what_stands_there() {
    String lot = shelf.lotWith(3, "PT");
    post(RELOCATIONS, relocation(lot, "PT", 5))
        .statusCode(409)
        .body("detail", containsString("cool-room holds 3 × PT of lot " + lot));
  }

  private static String relocation(String lot, String size, int count) {
    return """
        {"from": "cool-room", "to": "barrel-room", "container": "%s", "lot": "%s", "count": %d,\
         "reason": "Shelf repaired"}"""
        .formatted(size, lot, count);
  }

  private static String writeOff(String lot, String size, int count, String cause) {
    return """
        {"place": "cool-room", "container": "%s", "lot": "%s", "count": %d, "cause": "%s"}"""
        .formatted(size, lot, count, cause);
  }
}
