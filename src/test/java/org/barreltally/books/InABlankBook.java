package org.barreltally.books;

import jakarta.enterprise.inject.spi.CDI;
import java.sql.SQLException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** Has each test of a class run in a book that no other writes in. */
public interface InABlankBook {

  @BeforeEach
  default void in_a_book_of_its_own() throws SQLException {
    CDI.current().select(BlankBook.class).get().open();
  }

  @AfterEach
  default void and_no_longer() {
    CDI.current().select(BlankBook.class).get().close();
  }
}
