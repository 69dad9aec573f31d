package org.barreltally.people;

import java.time.Duration;

/** Too many wrong passwords for one user name; no more are looked at until the wait is over. */
public final class TooManyAttempts extends RuntimeException {

  private final Duration wait;

  public TooManyAttempts(Duration wait) {
    super("too many attempts", null, false, false);
    this.wait = wait;
  }

  /** How long to wait before trying again, at least one second. */
  public Duration retryAfter() {
    return wait.compareTo(Duration.ofSeconds(1)) < 0 ? Duration.ofSeconds(1) : wait;
  }
}
