package org.barreltally.books;

import io.quarkus.test.Mock;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.Optional;

/** The program's one book in the tests, which may be another one for a while. */
@Mock
@Singleton
class BookInTurn extends Books {

  private volatile Book turn = Book.ONLY;

  @Inject
  BookInTurn(BookAsked asked) {
    super(Optional.empty(), asked);
  }

  void turnTo(Book book) {
    turn = book;
  }

  @Override
  public Optional<Book> atHand() {
    return Optional.of(turn);
  }
}
