package org.barreltally.people;

import java.time.Duration;

/**
 * Too many wrong passwords for one user name or from one network; no more are looked at until the
 * wait is over.
 */
public final class TooManyAttempts extends RuntimeException {

  private final Duration wait;
  private final boolean first;

  public TooManyAttempts(Duration wait) {
    this(wait, false);
  }

  /**
   * @param first whether it is the first attempt that is not looked at
   */
  public TooManyAttempts(Duration wait, boolean first) {
    super("too many attempts", null, false, false);
    this.wait = wait;
    this.first = first;
  }

  /** Whether it is the first attempt that is not looked at. */
  public boolean isFirst() {
    return first;
  }

  /** How long to wait before trying again, at least one second. */
  public Duration retryAfter() {
    return wait.compareTo(Duration.ofSeconds(1)) < 0 ? Duration.ofSeconds(1) : wait;
  }
}
