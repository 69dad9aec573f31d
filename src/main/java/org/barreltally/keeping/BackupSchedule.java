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
  private ScheduledExecutorService looking;
  private String lastTrouble = "";

  /** For these backups, as often as set. */
  public BackupSchedule(Backups backups, KeepingSettings settings, Clock clock) {
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
   * Makes a backup if one is due. Trouble is logged, once until it changes, and tried again at the
   * next look; the start page tells when the last good one grows old.
   */
  public void look() {
    try {
      if (isDue()) {
        Backup made = backups.make().backup();
        LOG.infof("Backup %s made: %d rows, %d bytes", made.name(), made.rows(), made.bytes());
      } else if (!backups.lastIsAtSecondPlace()) {
        backups.bringToSecondPlace();
      }
      lastTrouble = "";
    } catch (Refusal refused) {
      tell(refused.getMessage());
    } catch (RuntimeException defect) { // the schedule must go on
      tell("The backup failed: " + defect);
      LOG.debug("a backup failed", defect);
    }
  }

  private void tell(String trouble) {
    if (!trouble.equals(lastTrouble)) {
      LOG.warn(trouble);
      lastTrouble = trouble;
    }
  }

  private boolean isDue() {
    Instant dueIfBefore = clock.instant().minus(settings.every());
    return backups.lastGood().map(made -> !made.isAfter(dueIfBefore)).orElse(true);
  }
}
