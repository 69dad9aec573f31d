package org.barreltally.books.internal;

import io.agroal.api.AgroalPoolInterceptor;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.barreltally.books.Book;
import org.barreltally.books.Books;
import org.postgresql.core.Utils;

/**
 * Hands out connections that may read and write the book at hand and see no other: each time with
 * that book's role and its schema alone on the search path, or, if no book is at hand, with
 * neither. It is said each time and not remembered, because a transaction that is undone undoes it
 * as well.
 */
@Singleton
class BookOfConnection implements AgroalPoolInterceptor {

  private static final String OF_NONE = "SET ROLE NONE; SET search_path = ''";

  private final Books books;

  BookOfConnection(Books books) {
    this.books = books;
  }

  @Override
  public void onConnectionAcquire(Connection connection) {
    if (!books.several()) {
      return;
    }
    Optional<Book> book = books.atHand();
    try (Statement statement = connection.createStatement()) {
      statement.execute(book.isPresent() ? of(book.get()) : OF_NONE);
    } catch (SQLException e) {
      throw new IllegalStateException("a connection could not be turned to a book", e);
    }
  }

  private static String of(Book book) throws SQLException {
    StringBuilder words = new StringBuilder("SET ROLE ");
    Utils.escapeIdentifier(words, book.role());
    words.append("; SET search_path = ");
    return Utils.escapeIdentifier(words, book.name()).toString();
  }
}
