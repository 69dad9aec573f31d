package org.barreltally.people.internal;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.barreltally.people.TooManyAttempts;

/**
 * Counts attempts at a password per user name within a window that opens with the first one. An
 * attempt counts before it is judged, so that many at once do not slip through; a right one clears
 * the count.
 */
public final class Attempts {

  private static final long NAMES_AT_MOST = 50_000;

  private record Window(long openedAt, AtomicInteger attempts) {}

  private final int limit;
  private final Duration window;
  private final Ticker ticker;
  private final Cache<String, Window> windows;

  public Attempts(int limit, Duration window, Ticker ticker) {
    this.limit = limit;
    this.window = window;
    this.ticker = ticker;
    this.windows =
        Caffeine.newBuilder()
            .expireAfterWrite(window)
            .ticker(ticker)
            .maximumSize(NAMES_AT_MOST)
            .build();
  }

  /**
   * Counts one attempt for {@code name}.
   *
   * @throws TooManyAttempts if the limit within the window is passed
   */
  public void count(String name) {
    Window open = open(name);
    int attempts = open.attempts().incrementAndGet();
    if (attempts > limit) {
      throw tooMany(open, attempts == limit + 1);
    }
  }

  /**
   * Counts one that failed; {@link #require} refuses once the limit is passed.
   *
   * @return whether it was the one that reached the limit
   */
  public boolean countFailed(String name) {
    return open(name).attempts().incrementAndGet() == limit;
  }

  /**
   * Counts nothing.
   *
   * @throws TooManyAttempts if the limit within the window is reached
   */
  public void require(String name) {
    Window open = windows.getIfPresent(name);
    if (open != null && open.attempts().get() >= limit) {
      throw tooMany(open, false);
    }
  }

  private Window open(String name) {
    return windows.get(name, key -> new Window(ticker.read(), new AtomicInteger()));
  }

  private TooManyAttempts tooMany(Window open, boolean first) {
    return new TooManyAttempts(window.minusNanos(ticker.read() - open.openedAt()), first);
  }

  /** Forgets the attempts for {@code name}: the password was right. */
  public void clear(String name) {
    windows.invalidate(name);
  }
}
