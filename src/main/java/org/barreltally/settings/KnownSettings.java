package org.barreltally.settings;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;
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

  /** What is remembered of one book. */
  private record Memory(AtomicReference<Known> known, AtomicLong forgotten, AtomicBoolean asking) {
    Memory() {
      this(new AtomicReference<>(), new AtomicLong(), new AtomicBoolean());
    }
  }

  private final SettingRows rows;
  private final Clock clock;
  private final OfEachBook<Memory> memory;

  KnownSettings(SettingRows rows, Clock clock, Books books) {
    this.rows = rows;
    this.clock = clock;
    this.memory = books.keeping(Memory::new);
  }

  Timeline timeline() {
    Memory here = memory.here();
    Known last = here.known().get();
    Instant now = clock.instant();
    if (last == null) {
      return ask(here, null, now).timeline();
    }
    if (last.isTrustedAt(now) || !here.asking().compareAndSet(false, true)) {
      return last.timeline();
    }
    try {
      return ask(here, last, now).timeline();
    } finally {
      here.asking().set(false);
    }
  }

  /** Called once a change is committed. */
  void forget() {
    Memory here = memory.here();
    here.forgotten().incrementAndGet();
    here.known().set(null);
  }

  private Known ask(Memory here, Known last, Instant now) {
    long before = here.forgotten().get();
    long count = rows.count();
    Timeline timeline =
        last != null && last.rows() == count ? last.timeline() : new Timeline(rows.all());
    Known fresh = new Known(timeline, count, now);
    if (here.forgotten().get() == before) {
      here.known().set(fresh);
    }
    return fresh;
  }
}
