package org.barreltally.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OfEachBookTest {

  private static final Book RIDGE = Book.read("ridge:coop_ridge_app");
  private static final Book HOLLOW = Book.read("hollow:coop_hollow_app");

  private Optional<Book> asked = Optional.empty();
  private final Books books = Books.several(List.of(RIDGE, HOLLOW), () -> asked);

  @Test
  void a_program_with_one_book_has_it_at_hand_everywhere() {
    Books one = Books.one();
    assertFalse(one.several());
    assertEquals("", one.here().name());
    OfEachBook<Object> kept = one.keeping(Object::new);
    assertSame(kept.here(), kept.here());
    assertEquals(Optional.empty(), one.named(""));
    assertEquals("Saved.", one.here().before("Saved."));
  }

  @Test
  void what_is_kept_of_one_of_several_is_not_told_in_another() {
    OfEachBook<Object> kept = books.keeping(Object::new);
    asked = Optional.of(RIDGE);
    Object ofRidge = kept.here();
    asked = Optional.of(HOLLOW);
    assertNotSame(ofRidge, kept.here());
    asked = Optional.of(RIDGE);
    assertSame(ofRidge, kept.here());
  }

  @Test
  void without_a_book_at_hand_nothing_is_told() {
    OfEachBook<Object> kept = books.keeping(Object::new);
    assertTrue(books.atHand().isEmpty());
    assertThrows(IllegalStateException.class, kept::here);
    assertThrows(IllegalStateException.class, books::here);
  }

  @Test
  void the_programs_own_work_is_for_the_book_that_it_names_and_ends_with_it() {
    asked = Optional.of(HOLLOW);
    List<Book> worked = new ArrayList<>();
    books.each(book -> worked.add(books.here()));
    assertEquals(List.of(RIDGE, HOLLOW), worked);
    books.work(
        RIDGE,
        () -> {
          books.work(HOLLOW, () -> assertEquals(HOLLOW, books.here()));
          assertEquals(RIDGE, books.here());
        });
    assertThrows(ArithmeticException.class, () -> books.work(RIDGE, () -> books.all().get(1 / 0)));
    assertEquals(HOLLOW, books.here());
  }

  @Test
  void names_lead_to_books() {
    assertEquals(Optional.of(HOLLOW), books.named("hollow"));
    assertEquals(Optional.empty(), books.named("valley"));
    assertEquals("hollow:coop_hollow_app", HOLLOW.written());
    assertEquals("hollow: Saved.", HOLLOW.before("Saved."));
  }
}
