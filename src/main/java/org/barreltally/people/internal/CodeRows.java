package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;

/** The rows of {@code code_seeds} and {@code spare_codes}. */
@ApplicationScoped
public class CodeRows {

  /**
   * A seed.
   *
   * @param confirmedAt null while it is being set up
   * @param misses in a row
   */
  public record Seed(byte[] seed, Instant confirmedAt, int misses) {

    /** Whether codes are asked for at sign-in. */
    public boolean isConfirmed() {
      return confirmedAt != null;
    }
  }

  private final DataSource database;

  @Inject
  CodeRows(DataSource database) {
    this.database = database;
  }

  /** The person's seed. */
  public Optional<Seed> of(UUID user) {
    return new Statement(
            database, "select seed, confirmed_at, misses from code_seeds where user_id = ?", user)
        .first(
            row ->
                new Seed(
                    row.getBytes("seed"),
                    row.getTimestamp("confirmed_at") == null
                        ? null
                        : row.getTimestamp("confirmed_at").toInstant(),
                    row.getInt("misses")));
  }

  /** Whether anybody is asked for codes. */
  public boolean any() {
    return new Statement(
            database, "select 1 from code_seeds where confirmed_at is not null limit 1")
        .first(row -> true)
        .isPresent();
  }

  /** Keeps a seed to be confirmed, in place of one that was not. Says whether it is kept. */
  public boolean begin(UUID user, byte[] seed, Instant at) {
    new Statement(
            database, "delete from code_seeds where user_id = ? and confirmed_at is null", user)
        .run();
    return new Statement(
                database,
                "insert into code_seeds (user_id, seed, begun_at) values (?, ?, ?) on conflict do nothing",
                user,
                seed,
                at)
            .run()
        == 1;
  }

  /**
   * Asks for codes from now on. Says whether there was a seed to be confirmed. Whoever is just
   * signing in without a code waits for the end of the transaction and is judged by what it leaves.
   */
  public boolean confirm(UUID user, long step, Instant at) {
    new Statement(database, "select id from users where id = ? for no key update", user)
        .first(row -> true);
    return new Statement(
                database,
                "update code_seeds set confirmed_at = ?, last_step = ? where user_id = ? and confirmed_at is null",
                at,
                step,
                user)
            .run()
        == 1;
  }

  /** Takes the code of a step unless one of it, or of a later one, was taken. */
  public boolean take(UUID user, long step) {
    return new Statement(
                database,
                """
                update code_seeds set last_step = ?, misses = 0
                where user_id = ? and confirmed_at is not null and last_step < ?""",
                step,
                user,
                step)
            .run()
        == 1;
  }

  /** Takes a spare code unless it was taken. */
  public boolean takeSpare(UUID user, byte[] hash, Instant at) {
    boolean taken =
        new Statement(
                    database,
                    "update spare_codes set used_at = ? where user_id = ? and code_hash = ? and used_at is null",
                    at,
                    user,
                    hash)
                .run()
            == 1;
    if (taken) {
      new Statement(database, "update code_seeds set misses = 0 where user_id = ?", user).run();
    }
    return taken;
  }

  public void miss(UUID user) {
    new Statement(database, "update code_seeds set misses = misses + 1 where user_id = ?", user)
        .run();
  }

  public void addSpare(UUID user, List<byte[]> hashes) {
    for (byte[] hash : hashes) {
      new Statement(
              database, "insert into spare_codes (user_id, code_hash) values (?, ?)", user, hash)
          .run();
    }
  }

  public int spareLeft(UUID user) {
    return new Statement(
            database,
            "select count(*) as left_over from spare_codes where user_id = ? and used_at is null",
            user)
        .first(row -> row.getInt("left_over"))
        .orElseThrow();
  }

  /** Removes seed and spare codes. Says whether codes were asked for. */
  public boolean remove(UUID user) {
    new Statement(database, "delete from spare_codes where user_id = ?", user).run();
    return new Statement(
            database,
            "delete from code_seeds where user_id = ? returning confirmed_at is not null as asked",
            user)
        .first(row -> row.getBoolean("asked"))
        .orElse(false);
  }
}
