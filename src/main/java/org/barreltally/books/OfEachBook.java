package org.barreltally.books;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What the program keeps in memory of a book: one for each, so that nothing read from one
 * sugarhouse's book is ever told in another's.
 */
public final class OfEachBook<T> {

  private final Books books;
  private final Supplier<T> made;
  private final Map<Book, T> kept = new ConcurrentHashMap<>();

  OfEachBook(Books books, Supplier<T> made) {
    this.books = books;
    this.made = made;
  }

  /**
   * That of the book at hand.
   *
   * @throws IllegalStateException if no book is at hand
   */
  public T here() {
    return kept.computeIfAbsent(books.here(), book -> made.get());
  }
}
