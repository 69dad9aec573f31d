package org.barreltally.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.sql.DataSource;
import org.barreltally.books.Books;
import org.barreltally.people.internal.AfterTransaction;
import org.barreltally.people.internal.RowsFixture;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.TokenRows;
import org.barreltally.people.internal.Users;
import org.junit.jupiter.api.Test;

/** Sessions and tokens end on time; the clock is moved, nothing waits. */
@QuarkusTest
class EndingTest {

  @Inject DataSource database;
  @Inject TokenRows tokenRows;
  @Inject Users users;
  @Inject PersonFixture people;
  @Inject EntranceLog log;
  @Inject Passwords passwords;
  @Inject AfterTransaction afterTransaction;

  private final AtomicReference<Instant> now =
      new AtomicReference<>(Instant.parse("2026-03-14T08:00:00Z"));
  private final Clock clock = ((InstantSource) now::get).withZone(ZoneOffset.UTC);
  private final Secrets secrets = new Secrets();

  @Test
  void a_session_ends_when_it_is_unused_for_twelve_hours() {
    PageSessions sessions = sessions();
    Person person = person();
    String secret = begun(sessions, person);
    pass(Duration.ofHours(11));
    assertEquals(Optional.of(person), sessions.holder(secret));
    pass(Duration.ofHours(11));
    assertEquals(Optional.of(person), sessions.holder(secret));
    pass(Duration.ofHours(12).plusSeconds(1));
    assertEquals(Optional.empty(), sessions.holder(secret));
  }

  @Test
  void a_session_in_use_ends_after_thirty_days() {
    PageSessions sessions = sessions();
    Person person = person();
    String secret = begun(sessions, person);
    for (int hours = 0; hours < 30 * 24; hours += 6) {
      assertEquals(Optional.of(person), sessions.holder(secret));
      pass(Duration.ofHours(6));
    }
    pass(Duration.ofSeconds(1));
    assertEquals(Optional.empty(), sessions.holder(secret));
  }

  @Test
  void a_token_is_good_through_its_last_day_even_if_remembered() {
    AccessTokens tokens =
        new AccessTokens(tokenRows, secrets, log, clock, Books.one(), afterTransaction);
    Person person = person();
    String secret = tokens.issue(person.id(), "scale", LocalDate.parse("2026-03-15")).secret();
    pass(Duration.ofHours(39));
    assertEquals(Optional.of(person), tokens.holder(secret));
    pass(Duration.ofHours(1));
    assertEquals(Optional.empty(), tokens.recall(secret));
    assertEquals(Optional.empty(), tokens.holder(secret));
    assertTrue(
        tokens.of(person.id()).stream()
            .allMatch(token -> LocalDate.parse("2026-03-15").equals(token.usedOn())));
  }

  private PageSessions sessions() {
    return new PageSessions(passwords, RowsFixture.sessions(database, clock), secrets, log);
  }

  private String begun(PageSessions sessions, Person person) {
    return sessions.begin(users.named(person.name()).orElseThrow(), null).orElseThrow().secret();
  }

  private Person person() {
    return users.named(people.with("table", "a long password")).orElseThrow().person();
  }

  private void pass(Duration time) {
    now.updateAndGet(before -> before.plus(time));
  }
}
