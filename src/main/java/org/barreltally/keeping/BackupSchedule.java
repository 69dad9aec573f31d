package org.barreltally.keeping;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Instant;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.barreltally.books.Book;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;
import org.barreltally.refusal.Refusal;
import org.jboss.logging.Logger;

/**
 * Makes a backup by itself whenever the last good one is old enough. It asks for the age and not
 * for an hour of the day: a laptop is not always on.
 */
@ApplicationScoped
public class BackupSchedule {

  private static final Logger LOG = Logger.getLogger(BackupSchedule.class);
  private static final long MINUTES_TO_FIRST_LOOK = 2;
  private static final long MINUTES_BETWEEN_LOOKS = 10;

  private final Backups backups;
  private final KeepingSettings settings;
  private final Clock clock;
  private final Books books;
  private final OfEachBook<AtomicReference<String>> lastTrouble;
  private ScheduledExecutorService looking;

  /** For these backups, as often as set. */
  public BackupSchedule(Backups backups, KeepingSettings settings, Books books, Clock clock) {
    this.books = books;
    this.lastTrouble = books.keeping(() -> new AtomicReference<>(""));
    this.backups = backups;
    this.settings = settings;
    this.clock = clock;
  }

  void onStart(@Observes StartupEvent start) {
    if (settings.every().isZero()) {
      return;
    }
    looking =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread thread = new Thread(work, "backups");
              thread.setDaemon(true);
              return thread;
            });
    looking.scheduleWithFixedDelay(
        this::look, MINUTES_TO_FIRST_LOOK, MINUTES_BETWEEN_LOOKS, TimeUnit.MINUTES);
  }

  void onStop(@Observes ShutdownEvent stop) {
    if (looking != null) {
      looking.shutdownNow();
    }
  }

  /**
   * Makes a backup of each book for which one is due. Trouble is logged, once until it changes, and
   * tried again at the next look; the start page tells when the last good one grows old.
   */
  public void look() {
    books.each(this::look);
  }

  private void look(Book book) {
    try {
      if (isDue()) {
        Backup made = backups.make().backup();
        LOG.info(
            book.before(
                "Backup %s made: %d rows, %d bytes"
                    .formatted(made.name(), made.rows(), made.bytes())));
      } else if (!backups.lastIsAtSecondPlace()) {
        backups.bringToSecondPlace();
      }
      lastTrouble.here().set("");
    } catch (Refusal refused) {
      tell(book.before(refused.getMessage()));
    } catch (RuntimeException defect) { // the schedule must go on
      tell(book.before("The backup failed: " + defect));
      LOG.debug("a backup failed", defect);
    }
  }

  private void tell(String trouble) {
    if (!trouble.equals(lastTrouble.here().getAndSet(trouble))) {
      LOG.warn(trouble);
    }
  }

  private boolean isDue() {
    Instant dueIfBefore = clock.instant().minus(settings.every());
    return backups.lastGood().map(made -> !made.isAfter(dueIfBefore)).orElse(true);
  }
}
