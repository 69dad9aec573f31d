package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class RememberedTest {

  private static final byte[] KEY = {1, 2, 3};

  private final AtomicLong nanos = new AtomicLong();
  private final AtomicInteger judged = new AtomicInteger();
  private final Remembered<String> remembered =
      new Remembered<>(Duration.ofSeconds(30), nanos::get);

  @Test
  void what_proved_right_is_judged_once_until_its_time_is_over() {
    assertEquals(Optional.of("yes"), ask("yes"));
    assertEquals(Optional.of("yes"), ask("yes"));
    assertEquals(1, judged.get());
    nanos.addAndGet(Duration.ofSeconds(31).toNanos());
    ask("yes");
    assertEquals(2, judged.get());
  }

  @Test
  void what_proved_wrong_is_judged_every_time() {
    assertEquals(Optional.empty(), ask(null));
    assertEquals(Optional.empty(), ask(null));
    assertEquals(2, judged.get());
  }

  @Test
  void what_is_forgotten_is_forgotten_at_once() {
    ask("yes");
    remembered.forgetIf("yes"::equals);
    assertEquals(Optional.empty(), remembered.get(KEY));
  }

  @Test
  void what_was_judged_while_others_were_forgotten_is_not_kept() {
    Optional<String> found =
        remembered.get(
            KEY,
            key -> {
              remembered.forgetIf(value -> false);
              return Optional.of("old");
            });
    assertEquals(Optional.of("old"), found);
    assertEquals(Optional.empty(), remembered.get(KEY));
  }

  private Optional<String> ask(String answer) {
    return remembered.get(
        KEY,
        key -> {
          judged.incrementAndGet();
          return Optional.ofNullable(answer);
        });
  }
}
