package org.barreltally.errands.internal;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.barreltally.books.Book;
import org.barreltally.books.Books;
import org.barreltally.errands.Outcome;
import org.barreltally.errands.Progress;
import org.barreltally.people.Person;
import org.jboss.logging.Logger;

/** Does errands one after the other, each as whoever asked for it. */
@ApplicationScoped
public class ErrandWorker {

  /** How many may wait; a small farm never asks for so many, and what waits holds memory. */
  public static final int MOST_WAITING = 20;

  private static final Logger LOG = Logger.getLogger(ErrandWorker.class);
  private static final long SECONDS_BETWEEN_SIGNS = 15;

  private final ErrandRows rows;
  private final ErrandRun run;
  private final Clock clock;
  private final Books books;
  private final Map<UUID, Book> waiting = new ConcurrentHashMap<>();
  private final ExecutorService hands = Executors.newSingleThreadExecutor(work -> thread(work));
  private final ScheduledExecutorService signs =
      Executors.newSingleThreadScheduledExecutor(work -> thread(work));

  ErrandWorker(ErrandRows rows, ErrandRun run, Clock clock, Books books) {
    this.books = books;
    this.rows = rows;
    this.run = run;
    this.clock = clock;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "errands");
    thread.setDaemon(true);
    return thread;
  }

  void onStart(@Observes StartupEvent start) {
    signs.scheduleWithFixedDelay(
        this::sign, SECONDS_BETWEEN_SIGNS, SECONDS_BETWEEN_SIGNS, TimeUnit.SECONDS);
  }

  void onStop(@Observes ShutdownEvent stop) {
    signs.shutdownNow();
    hands.shutdownNow();
  }

  /** Errands that this copy of the program has taken and not ended. */
  public int waiting() {
    return waiting.size();
  }

  /** Takes an errand of the book at hand. */
  public void take(UUID id, Person asker, Function<Progress, Outcome> work) {
    Book book = books.here();
    waiting.put(id, book);
    hands.execute(
        () -> {
          try {
            books.work(book, () -> run.run(id, asker, work));
          } catch (RuntimeException e) {
            LOG.error("An errand could not be begun or its end not be written", e);
          } finally {
            waiting.remove(id);
          }
        });
  }

  /** Says that what waits here still does, and forgets what is old. */
  void sign() {
    books.each(this::sign);
  }

  private void sign(Book book) {
    try {
      QuarkusTransaction.requiringNew()
          .run(
              () -> {
                List<UUID> ids =
                    waiting.entrySet().stream()
                        .filter(taken -> taken.getValue().equals(book))
                        .map(Map.Entry::getKey)
                        .toList();
                if (!ids.isEmpty()) {
                  rows.alive(ids, clock.instant());
                }
                rows.forget(clock.instant());
              });
    } catch (RuntimeException e) {
      LOG.debug("no sign of errands this time", e);
    }
  }
}
