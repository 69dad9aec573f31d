package org.barreltally.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups made while eight people fill barrels and can them hold whole requests only. */
@QuarkusTest
class WhileOthersWriteTest {

  private static final int WRITERS = 8;
  private static final int BARRELS_EACH = 12;
  private static final int BACKUPS = 3;

  private static final String RUN =
      """
      {'on': '2024-06-20', 'draws': [{'barrel': '%s', 'all': true}],
       'fillTemperature': {'value': 185, 'unit': 'degF'},
       'fills': [{'container': 'PT', 'count': 300}], 'transmittance': 60, 'taste': 'clean'}
      """;

  @TempDir Path folder;

  /** What was answered, by the request's id: the tag of the barrel that was filled. */
  private final Map<UUID, String> filled = new ConcurrentHashMap<>();

  private final Map<UUID, String> canned = new ConcurrentHashMap<>();

  @Test
  void a_backup_has_all_that_was_answered_before_it_and_nothing_by_half() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
    CountDownLatch begun = new CountDownLatch(WRITERS);
    List<Future<?>> writing = new ArrayList<>();
    for (int n = 0; n < WRITERS; n++) {
      writing.add(threads.submit(() -> write(begun)));
    }
    threads.shutdown();
    begun.await();
    List<Set<UUID>> answered = new ArrayList<>();
    for (int n = 0; n < BACKUPS; n++) {
      answered.add(Set.copyOf(filled.keySet()));
      new Saving(EmptyDatabase.ofTheProgram()).save(folder.resolve(n + ".zip"), Instant.now());
    }
    boolean stillWriting = writing.stream().anyMatch(one -> !one.isDone());
    for (Future<?> one : writing) {
      one.get();
    }
    assertTrue(stillWriting, "the writers were done before the last backup was");
    assertEquals(WRITERS * BARRELS_EACH, filled.size());
    for (int n = 0; n < BACKUPS; n++) {
      try (EmptyDatabase empty = EmptyDatabase.create()) {
        new Restoring(empty.owned()).restore(folder.resolve(n + ".zip"));
        holdsWholeRequests(empty, answered.get(n));
      }
    }
  }

  private void write(CountDownLatch begun) {
    for (int n = 0; n < BARRELS_EACH; n++) {
      String tag = Owner.newTag("KW");
      UUID filling = UUID.randomUUID();
      Owner.posts(
              "/api/barrels", Owner.barrel(tag, 2024, "2024-03-14", 486.5, 42.0, 66.9, 62), filling)
          .statusCode(201);
      filled.put(filling, tag);
      if (n == 0) {
        begun.countDown();
      }
      UUID run = UUID.randomUUID();
      Owner.posts("/api/canning/runs", RUN.formatted(tag), run).statusCode(201);
      canned.put(run, tag);
    }
  }

  private void holdsWholeRequests(EmptyDatabase restored, Set<UUID> answered) throws SQLException {
    RoundTripTest.assertSound(restored);
    Set<UUID> kept = new TreeSet<>();
    for (String key : EmptyDatabase.column(restored.owned(), "SELECT key::text FROM requests")) {
      kept.add(UUID.fromString(key));
    }
    assertTrue(kept.containsAll(answered), "a request that was answered before is missing");
    Set<String> tags =
        Set.copyOf(EmptyDatabase.column(restored.owned(), "SELECT tag FROM fillings"));
    filled.forEach((id, tag) -> assertEquals(kept.contains(id), tags.contains(tag), tag));
    Set<String> drained =
        Set.copyOf(
            EmptyDatabase.column(
                restored.owned(), "SELECT tag FROM fillings WHERE state = 'drained'"));
    canned.forEach((id, tag) -> assertEquals(kept.contains(id), drained.contains(tag), tag));
  }
}
