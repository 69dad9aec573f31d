package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.people.EntranceEvent;
import org.barreltally.people.Person;
import org.barreltally.people.Role;

/** The rows of {@code users}. */
@ApplicationScoped
public class Users {

  /**
   * A person with the stored form of their password.
   *
   * @param asksForCode whether a code is asked for beside it
   */
  public record Known(Person person, String passwordHash, boolean asksForCode) {}

  private final DataSource database;

  @Inject
  public Users(DataSource database) {
    this.database = database;
  }

  /** The user of this name, which is in lower case, unless they left. */
  public Optional<Known> named(String name) {
    return new Statement(
            database,
            """
            select id, name, display_name, role, password_hash, exists (
              select from code_seeds c where c.user_id = u.id and c.confirmed_at is not null) as asks_for_code
            from users u where name = ? and left_at is null""",
            name)
        .first(
            row ->
                new Known(
                    person(row), row.getString("password_hash"), row.getBoolean("asks_for_code")));
  }

  /** Adds a user unless the name is taken. Says whether it was added. */
  public boolean add(Person person, String passwordHash, Instant at) {
    return new Statement(
                database,
                """
                insert into users (id, name, display_name, password_hash, role, created_at)
                values (?, ?, ?, ?, ?, ?) on conflict (name) do nothing""",
                person.id(),
                person.name(),
                person.displayName(),
                passwordHash,
                person.role().code(),
                at)
            .run()
        == 1;
  }

  /** Whether there is any user at all. */
  public boolean any() {
    return new Statement(database, "select 1 from users limit 1").first(row -> true).isPresent();
  }

  /**
   * Replaces the password's hash if it is still {@code before}, so that two changes at once do not
   * both count. Says whether it was replaced.
   */
  public boolean replaceHash(UUID id, String before, String after) {
    return new Statement(
                database,
                "update users set password_hash = ? where id = ? and password_hash = ?",
                after,
                id,
                before)
            .run()
        == 1;
  }

  /**
   * Gives the user of this name another password, asks for codes no longer, ends sessions and keeps
   * all that in the log, together. Says whether there is one who did not leave.
   */
  public boolean letIn(String name, String passwordHash, Instant at) {
    return new Statement(
                database,
                """
                with found as (
                  update users set password_hash = ? where name = ? and left_at is null returning id
                ), no_seed as (
                  delete from code_seeds where user_id in (select id from found)
                ), no_spare as (
                  delete from spare_codes where user_id in (select id from found)
                ), no_session as (
                  delete from sessions where user_id in (select id from found)
                )
                insert into entrance_log (id, what, about, recorded_at)
                select ?, ?, id, ? from found""",
                passwordHash,
                name,
                UUID.randomUUID(),
                EntranceEvent.LET_IN.code(),
                at)
            .run()
        == 1;
  }

  /** Reads a person from a row that has the columns id, name, display_name and role. */
  static Person person(ResultSet row) throws SQLException {
    return new Person(
        row.getObject("id", UUID.class),
        row.getString("name"),
        row.getString("display_name"),
        Role.of(row.getString("role")));
  }
}
