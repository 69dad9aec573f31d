package org.barreltally.books;

import io.agroal.api.AgroalPoolInterceptor;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import org.barreltally.keeping.BookDatabases;
import org.barreltally.keeping.OwnedDatabase;
import org.barreltally.keeping.Tables;

/**
 * A book that no other test writes in, for tests that close years or sum over everything: tables of
 * its own beside the others. While it is open the whole program reads and writes it and no other,
 * and remembers what it reads apart.
 */
@Singleton
public class BlankBook implements AgroalPoolInterceptor {

  private final BookInTurn books;
  private final BookDatabases databases;

  /** Where new connections find their tables; null as long as no test opened a book. */
  private volatile String path;

  @Inject
  BlankBook(BookInTurn books, BookDatabases databases) {
    this.books = books;
    this.databases = databases;
  }

  /** Makes one, with the owner who stands in the book of the tests, and turns to it. */
  public void open() throws SQLException {
    OwnedDatabase shared = databases.here();
    String schema = "own_" + UUID.randomUUID().toString().substring(24);
    OwnedDatabase own =
        new OwnedDatabase(
            shared.owner(), shared.applicationRole(), shared.applicationRole(), schema);
    run(
        own,
        "CREATE SCHEMA %s; GRANT USAGE ON SCHEMA %1$s TO %s"
            .formatted(schema, own.applicationRole()));
    new Tables(own).bringUpToDate();
    run(
        own,
        "INSERT INTO %s.users SELECT * FROM %s.users WHERE name = 'owner'"
            .formatted(schema, shared.schema()));
    path = schema;
    books.turnTo(new Book(schema, ""));
  }

  /** Turns back to the book of the tests. */
  public void close() {
    path = "DEFAULT";
    books.turnTo(Book.ONLY);
  }

  @Override
  public void onConnectionAcquire(Connection connection) {
    if (path == null) {
      return;
    }
    try (Statement statement = connection.createStatement()) {
      statement.execute("SET search_path = " + path);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void run(OwnedDatabase database, String sql) throws SQLException {
    try (Connection connection = database.owner().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
