package org.barreltally.start;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.barreltally.books.Book;
import org.barreltally.keeping.Tables;
import org.flywaydb.core.api.FlywayException;

/** Several books in one database: makes their schemas, roles and tables before the program runs. */
final class SeveralBooks {

  private final DatabaseLogin owner;
  private final DatabaseLogin application;
  private final BookRoles roles;

  /** Owned by one role, reached by one login of the application. */
  SeveralBooks(DatabaseLogin owner, DatabaseLogin application) {
    this.owner = owner;
    this.application = application;
    this.roles = new BookRoles(owner, application.user());
  }

  /**
   * Makes each book of these names ready.
   *
   * @param standby whether the database only reads, so that everything must be there
   * @throws CannotStart when that cannot be done; the sentence names the book
   */
  List<Book> ready(List<String> names, boolean standby) {
    List<Book> books = names.stream().map(roles::book).toList();
    try (Connection connection = owner.connect()) {
      for (Book book : books) {
        if (!standby) {
          roles.ensure(connection, book);
        }
        tables(book, standby);
        roles.refuseWithoutWall(connection, book);
      }
    } catch (SQLException e) {
      throw DatabaseFault.sentence(owner, e);
    }
    return books;
  }

  private void tables(Book book, boolean standby) {
    Tables tables = new Tables(owner.owned(book, application.user()));
    try {
      if (standby) {
        tables.mustBeOfThisVersion();
      } else {
        tables.bringUpToDate();
      }
    } catch (FlywayException e) {
      throw new CannotStart(
          "The book of %s could not be brought up to date: %s"
              .formatted(book.name(), DatabaseFault.oneLine(e)),
          e);
    }
  }
}
