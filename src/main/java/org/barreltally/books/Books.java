package org.barreltally.books;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The books that this program keeps, and the one at hand: that for which the request asks, or that
 * for which the program itself works.
 */
@ApplicationScoped
public class Books {

  private final List<Book> all;
  private final BookAsked asked;
  private final ThreadLocal<Book> workedFor = new ThreadLocal<>();

  /**
   * @param names of several books, each with its role; none where the program keeps one
   */
  @Inject
  Books(@ConfigProperty(name = "barreltally.books") Optional<List<String>> names, BookAsked asked) {
    this(names.orElse(List.of()).stream().map(Book::read).toList(), asked);
  }

  private Books(List<Book> several, BookAsked asked) {
    this.all = several.isEmpty() ? List.of(Book.ONLY) : several;
    this.asked = asked;
  }

  /** Those of a program that keeps one book. */
  public static Books one() {
    return new Books(List.of(), Optional::empty);
  }

  /** Several, with one who knows for which of them is asked. */
  static Books several(List<Book> books, BookAsked asked) {
    return new Books(books, asked);
  }

  /** All of them, at least one. */
  public List<Book> all() {
    return all;
  }

  /** Whether there are several, each under a name. */
  public boolean several() {
    return all.get(0) != Book.ONLY;
  }

  /** The book of a name, if it is one of several. */
  public Optional<Book> named(String name) {
    return all.stream().filter(book -> several() && book.name().equals(name)).findFirst();
  }

  /**
   * The book at hand.
   *
   * @throws IllegalStateException if there are several and none is at hand
   */
  public Book here() {
    return atHand()
        .orElseThrow(() -> new IllegalStateException("no sugarhouse's book is at hand here"));
  }

  /** The book at hand; empty if there are several and none is. */
  public Optional<Book> atHand() {
    if (!several()) {
      return Optional.of(Book.ONLY);
    }
    Book own = workedFor.get();
    return own != null ? Optional.of(own) : asked.book();
  }

  /** Does work of the program's own, in this thread, for one book. */
  public void work(Book book, Runnable work) {
    Book before = workedFor.get();
    workedFor.set(book);
    try {
      work.run();
    } finally {
      if (before == null) {
        workedFor.remove();
      } else {
        workedFor.set(before);
      }
    }
  }

  /** Does the same work for each book, one after the other. */
  public void each(Consumer<Book> work) {
    all.forEach(book -> work(book, () -> work.accept(book)));
  }

  /** Something that is kept in memory for each book apart, made when it is first asked for. */
  public <T> OfEachBook<T> keeping(Supplier<T> made) {
    return new OfEachBook<>(this, made);
  }
}
