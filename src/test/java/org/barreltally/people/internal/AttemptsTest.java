package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.barreltally.people.TooManyAttempts;
import org.junit.jupiter.api.Test;

class AttemptsTest {

  private final AtomicLong nanos = new AtomicLong();
  private final Attempts attempts = new Attempts(3, Duration.ofMinutes(5), nanos::get);

  @Test
  void after_the_limit_the_rest_of_the_window_is_the_wait() {
    exhaust("a");
    pass(Duration.ofMinutes(2));
    TooManyAttempts tooMany = assertThrows(TooManyAttempts.class, () -> attempts.count("a"));
    assertEquals(Duration.ofMinutes(3), tooMany.retryAfter());
  }

  @Test
  void trying_while_waiting_does_not_lengthen_the_wait() {
    exhaust("a");
    for (int i = 0; i < 10; i++) {
      pass(Duration.ofSeconds(30));
      if (i < 9) {
        assertThrows(TooManyAttempts.class, () -> attempts.count("a"));
      }
    }
    assertDoesNotThrow(() -> attempts.count("a"));
  }

  @Test
  void a_right_password_clears_the_count() {
    attempts.count("a");
    attempts.count("a");
    attempts.clear("a");
    exhaust("a");
    assertThrows(TooManyAttempts.class, () -> attempts.count("a"));
  }

  @Test
  void one_name_does_not_wait_for_another() {
    exhaust("a");
    assertDoesNotThrow(() -> attempts.count("b"));
  }

  private void exhaust(String name) {
    for (int i = 0; i < 3; i++) {
      attempts.count(name);
    }
  }

  private void pass(Duration time) {
    nanos.addAndGet(time.toNanos());
  }
}
