package org.barreltally.settings;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.barreltally.settings.internal.SettingRows;

/**
 * The timeline as this copy of the application knows it. A change made here is known at once; one
 * made by another copy on the same database within a second, because after that the number of rows,
 * which only grows, is asked for again. Nobody waits for another's reading: whoever finds it under
 * way goes on with what was known.
 */
@ApplicationScoped
class KnownSettings {

  private static final Duration TRUSTED = Duration.ofSeconds(1);

  private record Known(Timeline timeline, long rows, Instant asked) {
    boolean isTrustedAt(Instant now) {
      return !now.isBefore(asked) && now.isBefore(asked.plus(TRUSTED));
    }
  }

  private final SettingRows rows;
  private final Clock clock;
  private final AtomicReference<Known> known = new AtomicReference<>();
  private final AtomicLong forgotten = new AtomicLong();
  private final AtomicBoolean asking = new AtomicBoolean();

  KnownSettings(SettingRows rows, Clock clock) {
    this.rows = rows;
    this.clock = clock;
  }

  Timeline timeline() {
    Known last = known.get();
    Instant now = clock.instant();
    if (last == null) {
      return ask(null, now).timeline();
    }
    if (last.isTrustedAt(now) || !asking.compareAndSet(false, true)) {
      return last.timeline();
    }
    try {
      return ask(last, now).timeline();
    } finally {
      asking.set(false);
    }
  }

  /** Called once a change is committed. */
  void forget() {
    forgotten.incrementAndGet();
    known.set(null);
  }

  private Known ask(Known last, Instant now) {
    long before = forgotten.get();
    long count = rows.count();
    Timeline timeline =
        last != null && last.rows() == count ? last.timeline() : new Timeline(rows.all());
    Known fresh = new Known(timeline, count, now);
    if (forgotten.get() == before) {
      known.set(fresh);
    }
    return fresh;
  }
}
