package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.people.Member;
import org.barreltally.people.Role;

/** The rows of {@code users} as the owner sees and changes them. */
@ApplicationScoped
public class CrewRows {

  /**
   * Any number: whoever changes people takes this lock of PostgreSQL until the transaction ends.
   */
  private static final long LOCK = 4_022_001;

  private final DataSource database;

  @Inject
  CrewRows(DataSource database) {
    this.database = database;
  }

  public void lock() {
    new Statement(database, "select pg_advisory_xact_lock(?)", LOCK).first(row -> true);
  }

  /** Everybody by name. */
  public List<Member> all() {
    return new Statement(
            database,
            """
            select id, name, display_name, role, created_at, left_at, exists (
              select from code_seeds c where c.user_id = u.id and c.confirmed_at is not null) as codes
            from users u order by name""")
        .all(CrewRows::member);
  }

  public void role(UUID id, Role role) {
    new Statement(database, "update users set role = ? where id = ?", role.code(), id).run();
  }

  public void password(UUID id, String hash) {
    new Statement(database, "update users set password_hash = ? where id = ?", hash, id).run();
  }

  /**
   * @param at null for somebody who is back
   */
  public void left(UUID id, Instant at) {
    if (at == null) {
      new Statement(database, "update users set left_at = null where id = ?", id).run();
    } else {
      new Statement(database, "update users set left_at = ? where id = ?", at, id).run();
    }
  }

  public void names(UUID id, String name, String displayName) {
    new Statement(
            database,
            "update users set name = ?, display_name = ? where id = ?",
            name,
            displayName,
            id)
        .run();
  }

  public void log(UUID about, String what, Role role, Instant at, UUID by) {
    new Statement(
            database,
            """
            insert into people_log (id, about, what, role, recorded_at, recorded_by)
            values (?, ?, ?, ?, ?, ?)""",
            UUID.randomUUID(),
            about,
            what,
            role == null ? null : role.code(),
            at,
            by)
        .run();
  }

  private static Member member(ResultSet row) throws SQLException {
    OffsetDateTime left = row.getObject("left_at", OffsetDateTime.class);
    return new Member(
        row.getObject("id", UUID.class),
        row.getString("name"),
        row.getString("display_name"),
        Role.of(row.getString("role")),
        row.getObject("created_at", OffsetDateTime.class).toInstant(),
        left == null ? null : left.toInstant(),
        row.getBoolean("codes"));
  }
}
