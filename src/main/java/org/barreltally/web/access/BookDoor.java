package org.barreltally.web.access;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.smallrye.common.vertx.ContextLocals;
import io.smallrye.common.vertx.VertxContext;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.barreltally.books.Book;
import org.barreltally.books.BookAsked;
import org.barreltally.books.Books;
import org.barreltally.web.problem.Problem;
import org.barreltally.web.problem.ProblemAnswer;

/**
 * Where one program keeps several books, the host name says for which of them is asked: its first
 * part is the book's name. Whoever comes under another name is told so before anything is looked
 * up. What the book holds is opened by its own people's passwords alone.
 */
@ApplicationScoped
class BookDoor implements BookAsked {

  /** Before the crowd. */
  private static final int PRIORITY = 395;

  /** Whether the program lives, and what every page looks like. */
  private static final Pattern OF_NO_BOOK = Pattern.compile("/(q/health|assets)(/.*)?");

  private static final String BOOK = BookDoor.class.getName();

  private final Books books;
  private final ProblemAnswer answer;

  @Inject
  BookDoor(Books books, ProblemAnswer answer) {
    this.books = books;
    this.answer = answer;
  }

  void register(@Observes Filters filters) {
    if (books.several()) {
      filters.register(this::enter, PRIORITY);
    }
  }

  private void enter(RoutingContext context) {
    Optional<Book> book = books.named(firstPart(context));
    book.ifPresent(found -> ContextLocals.put(BOOK, found));
    if (book.isPresent() || OF_NO_BOOK.matcher(context.normalizedPath()).matches()) {
      context.next();
    } else {
      answer.send(problem(), context);
    }
  }

  private static String firstPart(RoutingContext context) {
    String host = context.request().authority() == null ? "" : context.request().authority().host();
    int dot = host.indexOf('.');
    return (dot < 0 ? host : host.substring(0, dot)).toLowerCase(Locale.ROOT);
  }

  /** Status by RFC 9110, section 15.5.20. */
  private static Problem problem() {
    return new Problem(
        421,
        "no-book-of-this-name",
        "No sugarhouse of this name",
        "Several sugarhouses are kept here, each under a host name of its own. Ask for yours by"
            + " the address that you were given.");
  }

  @Override
  public Optional<Book> book() {
    return VertxContext.isOnDuplicatedContext() ? ContextLocals.get(BOOK) : Optional.empty();
  }
}
