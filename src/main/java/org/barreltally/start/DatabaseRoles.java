package org.barreltally.start;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.postgresql.PGConnection;

/**
 * The two roles of the database: the owner runs the migrations, the application signs in as a
 * second role that may only do what the migrations granted to it. The second role's password is
 * derived from the owner's, so that several copies of the application agree without another
 * setting.
 */
public final class DatabaseRoles {

  private static final String SUFFIX = "_app";

  /** PostgreSQL cuts longer names off. */
  static final int NAME_BYTES_MAX = 63;

  /** Keeps copies that start together from changing the role at once; any fixed number does. */
  static final long ROLE_LOCK = 7_240_118_355_021L;

  private final DatabaseLogin owner;

  /** Roles of the owner's database. */
  public DatabaseRoles(DatabaseLogin owner) {
    this.owner = owner;
  }

  /** The application role's login: the owner's name with {@code _app}, and the derived password. */
  public DatabaseLogin application() {
    String role = owner.user() + SUFFIX;
    if (role.getBytes(StandardCharsets.UTF_8).length > NAME_BYTES_MAX) {
      throw new CannotStart(
          "The name of the database role in BARRELTALLY_DB_USER is too long: at most %d bytes fit."
              .formatted(NAME_BYTES_MAX - SUFFIX.length()));
    }
    return owner.as(role, applicationPassword(owner.password(), owner.database()));
  }

  /**
   * Derives the application role's password: HMAC-SHA256 (RFC 2104) keyed with the owner's password
   * over a fixed text and the database's name, as base64url without padding (RFC 4648), 43
   * characters.
   */
  static String applicationPassword(String ownerPassword, String database) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(ownerPassword.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
      String text = "barreltally application role for " + database;
      byte[] derived = mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getUrlEncoder().withoutPadding().encodeToString(derived);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has HmacSHA256", e);
    }
  }

  /**
   * Makes sure that the application role can sign in, creating or mending it as the owner if it
   * cannot.
   *
   * @return the application role's login
   * @throws CannotStart when the server cannot be reached, does not let the owner in, or the owner
   *     may not create roles
   */
  public DatabaseLogin ensure() {
    DatabaseLogin application = application();
    try (Connection connection = owner.connect()) {
      if (!canSignIn(application)) {
        grantSignIn(connection, application);
        if (!canSignIn(application)) {
          throw new CannotStart(
              "The server does not let the application's role %s in, although it exists; check pg_hba.conf."
                  .formatted(application.user()));
        }
      }
      refuseTooMuchPower(connection, application);
    } catch (SQLException e) {
      throw DatabaseFault.sentence(owner, e);
    }
    return application;
  }

  /**
   * The application role of a standby, which has the roles of the server that it follows.
   *
   * @throws CannotStart when the server cannot be reached or does not know the role yet
   */
  public DatabaseLogin ofStandby() {
    DatabaseLogin application = application();
    try (Connection connection = owner.connect()) {
      if (!canSignIn(application)) {
        throw new CannotStart(
            "The standby at %s does not know the role %s yet; start a copy on the server that it follows first, and wait until the standby has caught up."
                .formatted(owner.address(), application.user()));
      }
      refuseTooMuchPower(connection, application);
    } catch (SQLException e) {
      throw DatabaseFault.sentence(owner, e);
    }
    return application;
  }

  private static boolean canSignIn(DatabaseLogin application) throws SQLException {
    try (Connection connection = application.connect();
        PreparedStatement query =
            connection.prepareStatement(
                "SELECT has_schema_privilege(oid, 'USAGE') FROM pg_namespace WHERE nspname = ?")) {
      query.setString(1, application.schema());
      ResultSet usage = query.executeQuery();
      return usage.next() && usage.getBoolean(1);
    } catch (SQLException e) {
      if (DatabaseFault.isLoginRefused(e)
          || DatabaseFault.NOT_ALLOWED.equals(e.getSQLState())) { // no CONNECT on the database
        return false;
      }
      throw e;
    }
  }

  private void grantSignIn(Connection connection, DatabaseLogin application) throws SQLException {
    connection.setAutoCommit(false);
    try (Statement statement = connection.createStatement()) {
      PGConnection postgres = connection.unwrap(PGConnection.class);
      String role = postgres.escapeIdentifier(application.user());
      statement.execute("SELECT pg_advisory_xact_lock(" + ROLE_LOCK + ")");
      statement.execute(
          (exists(connection, application) ? "ALTER" : "CREATE") + " ROLE " + role + " LOGIN");
      // the driver sends the SCRAM verifier: the password itself reaches no server log
      postgres.alterUserPassword(
          application.user(), application.password().toCharArray(), "scram-sha-256");
      String database = postgres.escapeIdentifier(owner.database());
      statement.execute("GRANT CONNECT ON DATABASE " + database + " TO " + role);
      String schema = postgres.escapeIdentifier(owner.schema());
      if (!hasSchema(connection)) {
        statement.execute("CREATE SCHEMA " + schema);
      }
      statement.execute("GRANT USAGE ON SCHEMA " + schema + " TO " + role);
      connection.commit();
    } catch (SQLException e) {
      connection.rollback();
      if (DatabaseFault.NOT_ALLOWED.equals(e.getSQLState())) {
        throw mayNotCreate(application, e);
      }
      throw e;
    } finally {
      connection.setAutoCommit(true);
    }
  }

  private boolean hasSchema(Connection connection) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT 1 FROM pg_namespace WHERE nspname = ?")) {
      query.setString(1, owner.schema());
      return query.executeQuery().next();
    }
  }

  private static boolean exists(Connection connection, DatabaseLogin role) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT 1 FROM pg_roles WHERE rolname = ?")) {
      query.setString(1, role.user());
      return query.executeQuery().next();
    }
  }

  private CannotStart mayNotCreate(DatabaseLogin application, SQLException cause) {
    return new CannotStart(
        ("The role %1$s may not create or change the role %2$s, under which the application signs in;"
                + " let an administrator of the database run: ALTER ROLE \"%1$s\" CREATEROLE;"
                + " (and, if %2$s exists already: GRANT \"%2$s\" TO \"%1$s\" WITH ADMIN OPTION;).")
            .formatted(owner.user(), application.user()),
        cause);
  }

  /** The record is only safe from changes while the application's role is not the owner's. */
  private void refuseTooMuchPower(Connection connection, DatabaseLogin application)
      throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement(
            "SELECT rolsuper OR pg_has_role(rolname, current_user, 'MEMBER')"
                + " FROM pg_roles WHERE rolname = ?")) {
      query.setString(1, application.user());
      ResultSet power = query.executeQuery();
      if (power.next() && power.getBoolean(1)) {
        throw new CannotStart(
            ("The role %s is a superuser or a member of %s, so the database could not keep it from"
                    + " changing the record; take that right away from it.")
                .formatted(application.user(), owner.user()));
      }
    }
  }
}
