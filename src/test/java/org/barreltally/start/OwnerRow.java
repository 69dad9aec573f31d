package org.barreltally.start;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.UUID;
import org.barreltally.people.internal.PasswordHash;
import org.barreltally.people.internal.Secrets;

/**
 * The owner of books made ready for tests, with a password, a token and a session that every test
 * knows.
 */
final class OwnerRow {

  private OwnerRow() {}

  static void addTo(DatabaseLogin database) throws SQLException {
    UUID owner = UUID.randomUUID();
    String hash =
        PasswordHash.of(Program.PASSWORD, new Secrets().salt(), PasswordHash.ITERATIONS).stored();
    try (Connection connection = database.connect()) {
      insert(
          connection,
          "INSERT INTO users (id, name, display_name, password_hash, role, created_at)"
              + " VALUES (?, 'owner', 'Owner', ?, 'owner', now())",
          owner,
          hash);
      addToken(connection);
      insert(
          connection,
          "INSERT INTO sessions (secret_hash, user_id, created_at, used_at) VALUES (?, ?, now(), now())",
          Secrets.hash(Program.SESSION),
          owner);
    }
  }

  /** Adds the token to a book that made its owner itself. */
  static void addTokenTo(DatabaseLogin database) throws SQLException {
    try (Connection connection = database.connect()) {
      addToken(connection);
    }
  }

  private static void addToken(Connection connection) throws SQLException {
    insert(
        connection,
        "INSERT INTO access_tokens (id, user_id, name, secret_hash, created_at)"
            + " SELECT gen_random_uuid(), id, 'Tests', ?, now() FROM users WHERE name = 'owner'",
        Secrets.hash(Program.TOKEN));
  }

  private static void insert(Connection connection, String sql, Object... values)
      throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int n = 0; n < values.length; n++) {
        statement.setObject(n + 1, values[n]);
      }
      statement.executeUpdate();
    }
  }
}
