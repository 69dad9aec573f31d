package org.barreltally.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** More people than are let in at once: each is served or turned away plainly, and none is lost. */
@Isolated("it crowds the program, and nothing else may")
class CrowdIT {

  private static final int AT_ONCE = 3;
  private static final int PEOPLE = 40;

  @TempDir Path folder;

  @Test
  void who_is_too_many_hears_it_at_once_and_is_served_later() throws Exception {
    Map<String, String> settings = new HashMap<>(Program.ownBook(folder));
    settings.put("BARRELTALLY_REQUESTS_AT_ONCE", Integer.toString(AT_ONCE));
    try (Program program = Program.start(settings).awaitReady()) {
      Copies copies = new Copies(List.of(program.port()), Program.LOGIN);
      copies.read("/api/me");
      Map<Integer, Integer> statuses = new TreeMap<>();
      for (int wave = 0; wave < 5; wave++) {
        for (HttpResponse<String> answer : atOnce(copies)) {
          statuses.merge(answer.statusCode(), 1, Integer::sum);
          if (answer.statusCode() == 503) {
            assertEquals("3", answer.headers().firstValue("Retry-After").orElse(""));
            assertTrue(answer.body().contains("\"try-again\""), answer.body());
          }
        }
        // Who left made room: as many as are let in are let in.
        copies.read("/api/stock");
      }
      System.out.println("crowd: " + statuses);
      assertEquals(java.util.Set.of(200, 503), statuses.keySet());
    }
  }

  private static List<HttpResponse<String>> atOnce(Copies copies) throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
    try {
      CountDownLatch go = new CountDownLatch(1);
      List<Future<HttpResponse<String>>> asked = new ArrayList<>();
      for (int n = 0; n < PEOPLE; n++) {
        Callable<HttpResponse<String>> ask =
            () -> {
              go.await();
              return copies.get(new Random(1), copies.owner(), "/api/barrels");
            };
        asked.add(people.submit(ask));
      }
      go.countDown();
      List<HttpResponse<String>> answers = new ArrayList<>();
      for (Future<HttpResponse<String>> each : asked) {
        answers.add(each.get());
      }
      return answers;
    } finally {
      people.shutdownNow();
    }
  }
}
