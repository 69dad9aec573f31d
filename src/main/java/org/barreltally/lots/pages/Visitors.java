package org.barreltally.lots.pages;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * How often strangers ask: enough for a family with a shelf of jars, too seldom to try out lots.
 */
@ApplicationScoped
class Visitors {

  static final int PER_MINUTE = 60;
  private static final int REMEMBERED = 10_000;

  private final Cache<String, AtomicInteger> asked =
      Caffeine.newBuilder().maximumSize(REMEMBERED).expireAfterWrite(Duration.ofMinutes(1)).build();

  /** Counts one more question from an address; says whether it is answered. */
  boolean mayAsk(String address) {
    return asked.get(address, key -> new AtomicInteger()).incrementAndGet() <= PER_MINUTE;
  }
}
