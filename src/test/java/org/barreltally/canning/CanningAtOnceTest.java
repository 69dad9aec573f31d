package org.barreltally.canning;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.ledger.Invariants;
import org.junit.jupiter.api.Test;

/** Several canners at one barrel at the same time. */
@QuarkusTest
class CanningAtOnceTest {

  private static final int CANNERS = 12;

  @Inject Invariants invariants;

  @Test
  void a_barrel_gives_no_more_than_it_holds_however_many_draw() throws Exception {
    String tag = newTag("T");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    String run = run(tag, "{'value': 100, 'unit': 'lb'}", 70);
    List<Response> answers =
        together(() -> posts("/api/canning/runs", run, UUID.randomUUID()).extract().response());

    long stored = answers.stream().filter(a -> a.statusCode() == 201).count();
    long refused = answers.stream().filter(a -> a.statusCode() == 409).count();
    assertEquals(4, stored); // 444.5 lb are four times 100 lb and a rest
    assertEquals(CANNERS - 4, refused);
    assertEquals(
        44.5, reads("/api/barrels/" + tag).extract().jsonPath().getDouble("netWeight.value"), 0.02);
    assertEquals(
        4,
        answers.stream()
            .filter(a -> a.statusCode() == 201)
            .map(a -> a.path("lot"))
            .distinct()
            .count());
    invariants.check().forEach(f -> assertTrue(f.violations().isEmpty(), f.toString()));
  }

  @Test
  void a_run_told_many_times_under_one_id_is_one_run() throws Exception {
    String tag = newTag("U");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    String run = run(tag, "{'value': 30, 'unit': 'lb'}", 20);
    UUID id = UUID.randomUUID();
    List<Response> answers =
        together(() -> posts("/api/canning/runs", run, id).extract().response());

    assertEquals(List.of(201), answers.stream().map(Response::statusCode).distinct().toList());
    assertEquals(1, answers.stream().map(Response::asString).distinct().count());
    assertEquals(
        414.5,
        reads("/api/barrels/" + tag).extract().jsonPath().getDouble("netWeight.value"),
        0.02);
  }

  private static String run(String tag, String weight, int pints) {
    return """
        {'on': '2026-06-20', 'draws': [{'barrel': '%s', 'weight': %s}],
         'fillTemperature': {'value': 185, 'unit': 'degF'},
         'fills': [{'container': 'PT', 'count': %d}], 'transmittance': 57, 'taste': 'clean'}
        """
        .formatted(tag, weight, pints);
  }

  private static List<Response> together(Callable<Response> each) throws Exception {
    ExecutorService canners = Executors.newFixedThreadPool(CANNERS);
    try {
      List<Response> answers = new ArrayList<>();
      List<Callable<Response>> all = new ArrayList<>();
      for (int i = 0; i < CANNERS; i++) {
        all.add(each);
      }
      for (Future<Response> answer : canners.invokeAll(all)) {
        answers.add(answer.get());
      }
      return answers;
    } finally {
      canners.shutdownNow();
    }
  }
}
