package org.barreltally.people.internal;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What proved right a moment ago, by a hash of what was presented, so that it need not be looked up
 * at every call. Only successes are remembered, and only for a fixed time after they were judged.
 */
public final class Remembered<V> {

  private static final long ENTRIES_AT_MOST = 10_000;

  private final Cache<ByteBuffer, V> cache;
  private final AtomicLong forgettings = new AtomicLong();

  public Remembered(Duration time, Ticker ticker) {
    cache =
        Caffeine.newBuilder()
            .expireAfterWrite(time)
            .ticker(ticker)
            .maximumSize(ENTRIES_AT_MOST)
            .build();
  }

  /** What is remembered under {@code key}. */
  public Optional<V> get(byte[] key) {
    return Optional.ofNullable(cache.getIfPresent(ByteBuffer.wrap(key)));
  }

  /**
   * What is remembered under {@code key}, or else what {@code judge} finds. Callers at the same
   * time with the same key share one judging. Something judged while {@link #forgetIf} ran is given
   * back but not kept, as it may rest on what was just changed.
   */
  public Optional<V> get(byte[] key, Function<byte[], Optional<V>> judge) {
    long before = forgettings.get();
    ByteBuffer wrapped = ByteBuffer.wrap(key);
    V found = cache.get(wrapped, k -> judge.apply(key).orElse(null));
    if (forgettings.get() != before) {
      cache.invalidate(wrapped);
    }
    return Optional.ofNullable(found);
  }

  /** Forgets all that {@code rule} holds for, at once. */
  public void forgetIf(Predicate<V> rule) {
    forgettings.incrementAndGet();
    cache.asMap().values().removeIf(rule);
  }
}
