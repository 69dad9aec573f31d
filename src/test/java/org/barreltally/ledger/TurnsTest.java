package org.barreltally.ledger;

import static org.barreltally.start.Program.await;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** Who waits to have a lot's jars alone is not overtaken by those who would share them. */
@QuarkusTest
class TurnsTest {

  @Inject ShelfFixture shelf;
  @Inject Items items;
  @Inject Balances balances;
  @Inject BookRows rows;

  @Test
  void a_seller_who_comes_after_a_helper_waits_for_the_helper() throws Exception {
    String size = Owner.newSize(16);
    Item jars = items.jarsOf(shelf.lotWith(10, size), size).orElseThrow();
    CountDownLatch selling = new CountDownLatch(1);
    CountDownLatch sold = new CountDownLatch(1);
    List<String> order = Collections.synchronizedList(new ArrayList<>());
    ExecutorService people = Executors.newFixedThreadPool(3);

    Future<?> first =
        people.submit(
            () ->
                inOne(
                    () -> {
                      balances.beforeNaming(List.of(jars));
                      selling.countDown();
                      until(sold);
                      order.add("the first seller");
                    }));
    until(selling);
    Future<?> helper =
        people.submit(
            () ->
                inOne(
                    () -> {
                      balances.locked("cool-room", List.of(jars));
                      order.add("the helper");
                    }));
    await(() -> waiting() == 1);
    Future<?> second =
        people.submit(
            () ->
                inOne(
                    () -> {
                      balances.beforeNaming(List.of(jars));
                      order.add("the second seller");
                    }));
    await(() -> waiting() == 2);
    sold.countDown();
    for (Future<?> each : List.of(first, helper, second)) {
      each.get();
    }
    people.shutdown();

    assertEquals(List.of("the first seller", "the helper", "the second seller"), order);
  }

  /** In a transaction of its own. */
  private static void inOne(Runnable work) {
    QuarkusTransaction.requiringNew().run(work);
  }

  private long waiting() {
    return rows.number("SELECT count(*) FROM pg_locks WHERE locktype = 'advisory' AND NOT granted");
  }

  private static void until(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
