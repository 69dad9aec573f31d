package org.barreltally.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.barreltally.Owner;
import org.barreltally.books.Books;
import org.barreltally.settings.internal.SettingRows;
import org.junit.jupiter.api.Test;

/** Two copies of the application on one database, the second one's clock moved by hand. */
@QuarkusTest
class KnownSettingsTest {

  private static final Instant THEN = Instant.parse("2911-06-01T00:00:00Z");

  @Inject SettingRows rows;

  private static final class HandClock extends Clock {
    private Instant now = Instant.parse("2026-06-01T12:00:00Z");

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  @Test
  void another_copy_knows_a_change_after_a_second_and_reads_nothing_anew_without_one() {
    HandClock clock = new HandClock();
    KnownSettings other = new KnownSettings(rows, clock, Books.one());
    Timeline before = other.timeline();
    clock.now = clock.now.plus(Duration.ofSeconds(2));
    assertSame(before, other.timeline());

    Owner.posts("/api/settings", "{'maker': 'Of two', 'validFrom': '2911-01-01T00:00:00Z'}")
        .statusCode(200);
    clock.now = clock.now.plusMillis(999);
    assertSame(before, other.timeline());
    clock.now = clock.now.plusMillis(1);
    assertEquals("Of two", other.timeline().at(THEN).said().maker());
  }

  @Test
  void a_clock_set_back_does_not_keep_an_old_timeline_trusted() {
    HandClock clock = new HandClock();
    KnownSettings other = new KnownSettings(rows, clock, Books.one());
    other.timeline();
    Owner.posts("/api/settings", "{'maker': 'Set back', 'validFrom': '2912-01-01T00:00:00Z'}")
        .statusCode(200);
    clock.now = clock.now.minus(Duration.ofHours(1));
    assertEquals(
        "Set back", other.timeline().at(Instant.parse("2912-01-01T00:00:00Z")).said().maker());
  }
}
