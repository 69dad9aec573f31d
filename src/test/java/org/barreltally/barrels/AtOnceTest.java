package org.barreltally.barrels;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.barrels.Asked.filled;
import static org.barreltally.barrels.Asked.halfBarrel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** Many writers at the same barrel at the same moment. */
@QuarkusTest
class AtOnceTest {

  private static final int WRITERS = 16;

  @Inject BookRows rows;

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  @Test
  void of_sixteen_who_fill_the_same_tag_exactly_one_succeeds() throws Exception {
    String tag = newTag("B");
    List<Integer> statuses =
        together(
            IntStream.range(0, WRITERS)
                .mapToObj(i -> (Callable<Integer>) () -> status("/api/barrels", halfBarrel(tag)))
                .toList());
    assertEquals(1, Collections.frequency(statuses, 201), statuses.toString());
    assertEquals(WRITERS - 1, Collections.frequency(statuses, 409), statuses.toString());
    assertEquals(1, rows.number("SELECT count(*) FROM fillings WHERE tag = '" + tag + "'"));
  }

  @Test
  void weighing_topping_up_grading_and_holding_at_once_wait_for_each_other() throws Exception {
    String tag = filled();
    String path = "/api/barrels/" + tag;
    String lot = reads(path).extract().path("lot");
    List<Callable<Integer>> writers = new ArrayList<>();
    for (int i = 0; i < WRITERS / 4; i++) {
      double more = i / 10.0;
      writers.add(
          () ->
              status(
                  path + "/weighings",
                  "{'on': '2024-06-12', 'weighing': {'gross': {'value': "
                      + (267 + more)
                      + ", 'unit': 'lb'}}}"));
      writers.add(
          () ->
              status(
                  path + "/top-ups",
                  Asked.with(
                      Asked.topUpTo(67.0),
                      "weighing.gross.value",
                      String.valueOf(400 + 100 * more))));
      writers.add(
          () ->
              status(
                  path + "/regrade",
                  "{'on': '2024-06-12', 'transmittance': 48, 'taste': 'clean'}"));
      writers.add(() -> status("/api/lots/" + lot + "/hold", "{'reason': 'Looked at twice'}"));
    }
    List<Integer> statuses = together(writers);
    assertTrue(
        Set.of(200, 201, 409, 422).containsAll(statuses),
        "never 404, 5xx or a deadlock: " + statuses);
    assertTrue(statuses.contains(201), statuses.toString());
    assertEquals(1, rows.number("SELECT count(*) FROM fillings WHERE tag = '" + tag + "'"));
  }

  @Test
  void of_sixteen_who_pour_the_same_barrel_away_exactly_one_does() throws Exception {
    String tag = filled();
    List<Integer> statuses =
        together(
            IntStream.range(0, WRITERS)
                .mapToObj(
                    i ->
                        (Callable<Integer>)
                            () ->
                                status(
                                    "/api/barrels/" + tag + "/write-offs",
                                    "{'on': '2024-06-12', 'all': true, 'cause': 'discarded', 'reason': 'Mould'}"))
                .toList());
    assertEquals(1, Collections.frequency(statuses, 201), statuses.toString());
    assertEquals(WRITERS - 1, Collections.frequency(statuses, 409), statuses.toString());
  }

  private static int status(String path, String body) {
    return posts(path, body).extract().statusCode();
  }

  private static List<Integer> together(List<Callable<Integer>> writers) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(writers.size());
    CyclicBarrier start = new CyclicBarrier(writers.size());
    try {
      List<Future<Integer>> running = new ArrayList<>();
      for (Callable<Integer> writer : writers) {
        running.add(
            threads.submit(
                () -> {
                  start.await();
                  return writer.call();
                }));
      }
      List<Integer> statuses = new ArrayList<>();
      for (Future<Integer> each : running) {
        statuses.add(each.get());
      }
      return statuses;
    } finally {
      threads.shutdownNow();
    }
  }
}
