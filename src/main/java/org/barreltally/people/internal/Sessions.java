package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.people.Person;

/** The rows of {@code sessions}, by the hash of the secret in the cookie. */
@ApplicationScoped
public class Sessions {

  /** A session unused for this long has ended; use is noted every {@link #NOTED_EVERY}. */
  static final Duration IDLE_MAX = Duration.ofHours(12);

  /** No session is older than this. */
  public static final Duration AGE_MAX = Duration.ofDays(30);

  static final Duration NOTED_EVERY = Duration.ofMinutes(5);

  private record Found(Person person, Instant usedAt) {}

  private final DataSource database;
  private final Clock clock;

  @Inject
  Sessions(DataSource database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Begins a session and clears away the person's ended ones.
   *
   * @param passwordHash on which the person was judged
   * @return false if that is no longer the present one, or they left: a change that is being stored
   *     is waited for
   */
  public boolean begin(byte[] hash, UUID user, String passwordHash) {
    Instant now = clock.instant();
    new Statement(
            database,
            "delete from sessions where user_id = ? and (used_at < ? or created_at < ?)",
            user,
            now.minus(IDLE_MAX),
            now.minus(AGE_MAX))
        .run();
    return new Statement(
                database,
                """
                insert into sessions (secret_hash, user_id, created_at, used_at)
                select ?, id, ?, ? from users where id = ? and password_hash = ? and left_at is null for share""",
                hash,
                now,
                now,
                user,
                passwordHash)
            .run()
        == 1;
  }

  /** Whose session this is, if it has not ended; notes its use. */
  public Optional<Person> use(byte[] hash) {
    Instant now = clock.instant();
    Optional<Found> found =
        new Statement(
                database,
                """
                select u.id, u.name, u.display_name, u.role, s.used_at
                from sessions s join users u on u.id = s.user_id
                where s.secret_hash = ? and u.left_at is null and s.used_at >= ? and s.created_at >= ?""",
                hash,
                now.minus(IDLE_MAX),
                now.minus(AGE_MAX))
            .first(row -> new Found(Users.person(row), row.getTimestamp("used_at").toInstant()));
    if (found.isPresent() && found.get().usedAt().isBefore(now.minus(NOTED_EVERY))) {
      new Statement(database, "update sessions set used_at = ? where secret_hash = ?", now, hash)
          .note();
    }
    return found.map(Found::person);
  }

  public void end(byte[] hash) {
    new Statement(database, "delete from sessions where secret_hash = ?", hash).run();
  }

  public void endAllOf(UUID user) {
    new Statement(database, "delete from sessions where user_id = ?", user).run();
  }
}
