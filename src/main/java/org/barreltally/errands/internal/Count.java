package org.barreltally.errands.internal;

import io.quarkus.narayana.jta.QuarkusTransaction;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.barreltally.errands.Progress;

/** Counts the steps of an errand and writes them down, now and then, beside the work at hand. */
final class Count implements Progress {

  private static final Duration BETWEEN = Duration.ofMillis(400);

  private final UUID id;
  private final ErrandRows rows;
  private final Clock clock;
  private Integer steps;
  private int done;
  private Instant written;

  Count(UUID id, ErrandRows rows, Clock clock) {
    this.id = id;
    this.rows = rows;
    this.clock = clock;
  }

  @Override
  public void of(int all) {
    steps = all;
    write();
  }

  @Override
  public void done(int more) {
    done += more;
    if (Duration.between(written, clock.instant()).abs().compareTo(BETWEEN) >= 0) {
      write();
    }
  }

  void write() {
    written = clock.instant();
    QuarkusTransaction.requiringNew().run(() -> rows.progress(id, done, steps, written));
  }
}
