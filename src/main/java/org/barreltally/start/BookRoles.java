package org.barreltally.start;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.barreltally.books.Book;
import org.postgresql.PGConnection;

/**
 * The roles of several books in one database. Nobody signs in as one of them: the application signs
 * in as a role that may do nothing by itself and takes on the role of the book at hand, which may
 * do in that book's schema what the migrations granted, and nothing in any other.
 */
final class BookRoles {

  private static final String SUFFIX = "_app";

  private final DatabaseLogin owner;
  private final String login;

  /** For the books of this owner, whose application signs in under that role. */
  BookRoles(DatabaseLogin owner, String login) {
    this.owner = owner;
    this.login = login;
  }

  /** A book of that name and the role that belongs to it. */
  Book book(String name) {
    String role = owner.user() + "_" + name + SUFFIX;
    if (role.getBytes(StandardCharsets.UTF_8).length > DatabaseRoles.NAME_BYTES_MAX) {
      throw new CannotStart(
          "The name of the database role in BARRELTALLY_DB_USER is too long beside the name of the"
              + " book "
              + name
              + ".");
    }
    return new Book(name, role);
  }

  /** Makes the book's schema and role, if they are not there. */
  void ensure(Connection connection, Book book) throws SQLException {
    connection.setAutoCommit(false);
    try (Statement statement = connection.createStatement()) {
      PGConnection postgres = connection.unwrap(PGConnection.class);
      String role = postgres.escapeIdentifier(book.role());
      String schema = postgres.escapeIdentifier(book.name());
      String application = postgres.escapeIdentifier(login);
      statement.execute("SELECT pg_advisory_xact_lock(" + DatabaseRoles.ROLE_LOCK + ")");
      if (!is(connection, "SELECT 1 FROM pg_roles WHERE rolname = ?", book.role())) {
        statement.execute("CREATE ROLE " + role + " NOLOGIN");
      }
      if (!is(connection, "SELECT 1 FROM pg_namespace WHERE nspname = ?", book.name())) {
        statement.execute("CREATE SCHEMA " + schema);
      }
      statement.execute("GRANT USAGE ON SCHEMA " + schema + " TO " + role);
      if (is(connection, "SELECT 1 FROM pg_roles WHERE rolname = ? AND rolinherit", login)) {
        statement.execute("ALTER ROLE " + application + " NOINHERIT");
      }
      if (!is(connection, "SELECT 1 WHERE pg_has_role(?, ?, 'MEMBER')", login, book.role())) {
        statement.execute("GRANT " + role + " TO " + application);
      }
      connection.commit();
    } catch (SQLException e) {
      connection.rollback();
      if (DatabaseFault.NOT_ALLOWED.equals(e.getSQLState())) {
        throw new CannotStart(
            ("The role %1$s may not make what the book of %2$s needs, a schema and the role %3$s;"
                    + " let an administrator of the database run: ALTER ROLE \"%1$s\" CREATEROLE;"
                    + " GRANT CREATE ON DATABASE \"%4$s\" TO \"%1$s\";.")
                .formatted(owner.user(), book.name(), book.role(), owner.database()),
            e);
      }
      throw e;
    } finally {
      connection.setAutoCommit(true);
    }
  }

  /**
   * Looks whether the book's role reads its tables and the application's own does not: so it is
   * unless a program that keeps one book used the schema before.
   */
  void refuseWithoutWall(Connection connection, Book book) throws SQLException {
    String users = book.name() + ".users";
    String query =
        "SELECT 1 WHERE has_table_privilege(?, ?, 'SELECT') AND NOT has_schema_privilege(?, ?, 'USAGE')";
    if (!is(connection, query, book.role(), users, login, book.name())) {
      throw new CannotStart(
          "The schema %s belongs to a program that keeps one book; save that book with backup and restore it under another name."
              .formatted(book.name()));
    }
    if (is(connection, "SELECT 1 WHERE pg_has_role(?, ?, 'MEMBER')", book.role(), owner.user())) {
      throw new CannotStart(
          "The role %s is a member of %s, so the database could not keep it from changing the record; take that right away from it."
              .formatted(book.role(), owner.user()));
    }
  }

  private static boolean is(Connection connection, String query, String... values)
      throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(query)) {
      for (int i = 0; i < values.length; i++) {
        statement.setString(i + 1, values[i]);
      }
      ResultSet rows = statement.executeQuery();
      return rows.next();
    }
  }
}
