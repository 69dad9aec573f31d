package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
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

  /** One person's sessions at once; one more ends the one that was used longest ago. */
  public static final int PER_PERSON_MAX = 20;

  /**
   * A session that has not ended.
   *
   * @param usedAt coarse
   * @param address of the network it began from; null where that is not known
   */
  public record Row(byte[] hash, Instant createdAt, Instant usedAt, String address) {}

  private record Found(Person person, Instant usedAt) {}

  private final DataSource database;
  private final Clock clock;

  @Inject
  Sessions(DataSource database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Begins a session and clears away the person's ended ones. A change of the person that is being
   * stored is waited for.
   *
   * @param judged as they were when they proved who they are
   * @param address of the network it begins from; null if that is not known
   * @return false if the password is no longer that one, codes are asked for now or no longer, or
   *     they left
   */
  @Transactional
  public boolean begin(byte[] hash, Users.Known judged, String address) {
    Instant now = clock.instant();
    UUID user = judged.person().id();
    new Statement(database, "select id from users where id = ? for share", user).first(row -> true);
    new Statement(
            database,
            "delete from sessions where user_id = ? and (used_at < ? or created_at < ?)",
            user,
            now.minus(IDLE_MAX),
            now.minus(AGE_MAX))
        .run();
    boolean begun =
        new Statement(
                    database,
                    """
                    insert into sessions (secret_hash, user_id, created_at, used_at, address)
                    select ?, u.id, ?, ?, ? from users u
                    where u.id = ? and u.password_hash = ? and u.left_at is null and ? = exists (
                      select from code_seeds c where c.user_id = u.id and c.confirmed_at is not null)""",
                    hash,
                    now,
                    now,
                    NetworkAddress.alone(address),
                    user,
                    judged.passwordHash(),
                    judged.asksForCode())
                .run()
            == 1;
    new Statement(
            database,
            """
            delete from sessions where secret_hash in (
              select secret_hash from sessions where user_id = ? order by used_at desc, created_at desc offset ?)""",
            user,
            PER_PERSON_MAX)
        .run();
    return begun;
  }

  /** The person's sessions that have not ended, the last used first. */
  public List<Row> of(UUID user) {
    Instant now = clock.instant();
    return new Statement(
            database,
            """
            select secret_hash, created_at, used_at, address from sessions
            where user_id = ? and used_at >= ? and created_at >= ? order by used_at desc, created_at desc""",
            user,
            now.minus(IDLE_MAX),
            now.minus(AGE_MAX))
        .all(
            row ->
                new Row(
                    row.getBytes("secret_hash"),
                    row.getTimestamp("created_at").toInstant(),
                    row.getTimestamp("used_at").toInstant(),
                    row.getString("address")));
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
