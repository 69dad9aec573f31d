package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.people.AccessToken;
import org.barreltally.people.Person;
import org.barreltally.people.TokenScope;

/** The rows of {@code access_tokens}. */
@ApplicationScoped
public class TokenRows {

  /** A token that may be used, and by whom. */
  public record Usable(UUID id, Person person, LocalDate expiresOn) {}

  private final DataSource database;

  @Inject
  TokenRows(DataSource database) {
    this.database = database;
  }

  public void add(AccessToken token, UUID user, byte[] hash, TokenScope scope) {
    new Statement(
            database,
            """
            insert into access_tokens (id, user_id, name, secret_hash, created_at, expires_on, scope)
            values (?, ?, ?, ?, ?, ?, ?)""",
            token.id(),
            user,
            token.name(),
            hash,
            token.createdAt(),
            token.expiresOn(),
            scope == null ? null : scope.code())
        .run();
  }

  /** The tokens of {@code user} that were not revoked, oldest first. */
  public List<AccessToken> of(UUID user) {
    return new Statement(
            database,
            """
            select id, name, created_at, expires_on, used_on from access_tokens
            where user_id = ? and revoked_at is null order by created_at, id""",
            user)
        .all(TokenRows::token);
  }

  /** The token with this hash if it is neither revoked nor expired; notes the day of its use. */
  public Optional<Usable> use(byte[] hash, LocalDate today) {
    Optional<Usable> found =
        new Statement(
                database,
                """
                select t.id as token_id, t.expires_on, t.scope, u.id, u.name, u.display_name, u.role
                from access_tokens t join users u on u.id = t.user_id
                where t.secret_hash = ? and t.revoked_at is null and u.left_at is null
                  and (t.expires_on is null or t.expires_on >= ?)""",
                hash,
                today)
            .first(
                row ->
                    new Usable(
                        row.getObject("token_id", UUID.class),
                        Users.person(row).within(TokenScope.of(row.getString("scope"))),
                        row.getObject("expires_on", LocalDate.class)));
    found.ifPresent(token -> noteUse(token.id(), today));
    return found;
  }

  /** Revokes the token if it is the user's and not revoked yet. Says whether it was. */
  public boolean revoke(UUID id, UUID user, Instant at) {
    return new Statement(
                database,
                """
                update access_tokens set revoked_at = ?
                where id = ? and user_id = ? and revoked_at is null""",
                at,
                id,
                user)
            .run()
        == 1;
  }

  /** Revokes all tokens of a user. */
  public void revokeAllOf(UUID user, Instant at) {
    new Statement(
            database,
            "update access_tokens set revoked_at = ? where user_id = ? and revoked_at is null",
            at,
            user)
        .run();
  }

  private void noteUse(UUID id, LocalDate today) {
    new Statement(
            database,
            "update access_tokens set used_on = ? where id = ? and used_on is distinct from ?",
            today,
            id,
            today)
        .note();
  }

  private static AccessToken token(ResultSet row) throws SQLException {
    return new AccessToken(
        row.getObject("id", UUID.class),
        row.getString("name"),
        row.getObject("created_at", OffsetDateTime.class).toInstant(),
        row.getObject("expires_on", LocalDate.class),
        row.getObject("used_on", LocalDate.class));
  }
}
