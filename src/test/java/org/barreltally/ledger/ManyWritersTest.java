package org.barreltally.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import org.barreltally.ledger.BookFixture.World;
import org.barreltally.ledger.BookPlay.Past;
import org.barreltally.ledger.BookPlay.Step;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Person;
import org.barreltally.people.Role;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.Test;

/** Eight people write in the same book at once, over the same items; nothing gets lost or made. */
@QuarkusTest
class ManyWritersTest {

  private static final int WRITERS = 8;
  private static final int STEPS_EACH = 300;

  @Inject BookFixture fixture;
  @Inject BookPlay play;
  @Inject Invariants invariants;
  @Inject EntityManager entities;
  @Inject CurrentUser user;

  private final Person writer = new Person(UUID.randomUUID(), "writer", "Writer", Role.OWNER);

  /** What was accepted, counted by those who asked for it. */
  private static final class Accepted {
    final AtomicLong movements = new AtomicLong();
    final AtomicLong entries = new AtomicLong();
    final AtomicLong promises = new AtomicLong();
    final AtomicLong pieces = new AtomicLong();
    final AtomicLong holds = new AtomicLong();
    final AtomicLong gradings = new AtomicLong();
    final AtomicLong refusals = new AtomicLong();
    final ConcurrentLinkedQueue<UUID> reversals = new ConcurrentLinkedQueue<>();
  }

  @Test
  void eight_writers_at_once_keep_the_book_whole() throws Exception {
    long seed = Seed.said("many writers");
    user.actAs(writer);
    World world = fixture.world();
    Past shared = new Past(new CopyOnWriteArrayList<>(), new CopyOnWriteArrayList<>());
    Accepted accepted = new Accepted();
    long gradingsBefore = count("SELECT count(*) FROM lot_gradings");

    inParallel(n -> write(new Random(seed + n), world, shared, accepted));

    assertEquals(
        accepted.movements.get(),
        count("SELECT count(*) FROM movements WHERE recorded_by = '" + writer.id() + "'"));
    assertEquals(
        accepted.entries.get(),
        count(
            "SELECT count(*) FROM entries e JOIN movements m ON m.id = e.movement"
                + " WHERE m.reverses IS NULL AND m.recorded_by = '"
                + writer.id()
                + "'"));
    assertEquals(
        accepted.pieces.get(),
        count(
            "SELECT sum(CASE step WHEN 'reserved' THEN pieces ELSE -pieces END)"
                + " FROM reservation_steps WHERE recorded_by = '"
                + writer.id()
                + "'"));
    assertEquals(
        accepted.holds.get() + processingHolds(),
        count("SELECT count(*) FROM lot_holds WHERE recorded_by = '" + writer.id() + "'"));
    assertEquals(
        accepted.gradings.get(), count("SELECT count(*) FROM lot_gradings") - gradingsBefore);
    assertEquals(accepted.reversals.size(), accepted.reversals.stream().distinct().count());
    assertTrue(accepted.movements.get() > 0 && accepted.refusals.get() > 0);
    for (UUID item : world.items()) {
      assertEquals(
          0, count("SELECT coalesce(sum(amount), 0) FROM balances WHERE item = '" + item + "'"));
    }
    invariants
        .check()
        .forEach(finding -> assertEquals(List.of(), finding.violations(), finding.name()));
  }

  private void write(Random random, World world, Past shared, Accepted accepted) {
    for (int n = 0; n < STEPS_EACH; n++) {
      Past seen = new Past(List.copyOf(shared.movements()), List.copyOf(shared.promises()));
      Step step = play.next(random, world, seen);
      try {
        UUID made = play.doIt(step, Instant.EPOCH);
        count(step, made, shared, accepted);
      } catch (Refusal refusal) {
        accepted.refusals.incrementAndGet();
      }
    }
  }

  private static void count(Step step, UUID made, Past shared, Accepted accepted) {
    long pieces = step.lines().stream().mapToLong(Reservations.Line::pieces).sum();
    switch (step.act()) {
      case MOVE, PACK -> {
        accepted.movements.incrementAndGet();
        accepted.entries.addAndGet(BookModel.net(step.transfers()).size());
        shared.movements().add(made);
      }
      case REVERSE -> {
        accepted.movements.incrementAndGet();
        accepted.reversals.add(step.subject());
        shared.movements().add(made);
      }
      case RESERVE -> {
        accepted.promises.incrementAndGet();
        accepted.pieces.addAndGet(pieces);
        shared.promises().add(new BookPlay.Promise(made, step.lines()));
      }
      case END -> accepted.pieces.addAndGet(-pieces);
      case HOLD, RELEASE -> accepted.holds.incrementAndGet();
      case GRADE -> accepted.gradings.incrementAndGet();
    }
  }

  /** Grading to Processing Grade holds by itself. */
  private long processingHolds() {
    return count(
        "SELECT count(*) FROM lot_gradings WHERE grade = 'processing' AND recorded_by = '"
            + writer.id()
            + "'");
  }

  private interface Work {
    void run(int writer) throws Exception;
  }

  private void inParallel(Work work) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
    CountDownLatch start = new CountDownLatch(WRITERS);
    List<Future<?>> running = new ArrayList<>();
    for (int n = 0; n < WRITERS; n++) {
      int number = n;
      running.add(
          threads.submit(
              () -> {
                ManagedContext request = Arc.container().requestContext();
                request.activate();
                try {
                  user.actAs(writer);
                  start.countDown();
                  start.await();
                  work.run(number);
                } finally {
                  request.terminate();
                }
                return null;
              }));
    }
    threads.shutdown();
    for (Future<?> one : running) {
      one.get();
    }
  }

  private long count(String sql) {
    return ((Number) entities.createNativeQuery(sql).getSingleResult()).longValue();
  }
}
