package org.barreltally.web.problem;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * A copy of the program before a standby of the book answers whoever reads. What somebody wants to
 * enter belongs to the copy that writes: it is told so at once, as something that is not done yet.
 */
@ApplicationScoped
public class ReadingCopy {

  /** After the crowd, before anybody's right to anything is asked for. */
  private static final int PRIORITY = 385;

  private static final Set<HttpMethod> READING =
      Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);

  /** Kept in the browser alone: units and language. */
  private static final String VIEW = "/view";

  private final ProblemAnswer answer;
  private final boolean reads;

  /**
   * @param reads whether the database is a standby
   */
  @Inject
  ReadingCopy(
      ProblemAnswer answer,
      @ConfigProperty(name = "barreltally.reading-copy", defaultValue = "false") boolean reads) {
    this.answer = answer;
    this.reads = reads;
  }

  void register(@Observes Filters filters) {
    if (reads) {
      filters.register(this::enter, PRIORITY);
    }
  }

  private void enter(RoutingContext context) {
    if (READING.contains(context.request().method()) || context.normalizedPath().equals(VIEW)) {
      context.next();
    } else {
      answer.send(problem(), context);
    }
  }

  static Problem problem() {
    return new Problem(
        503,
        "copy-only-reads",
        "This copy only reads",
        "It reads from a standby of the book, so nothing can be entered here and nothing was."
            + " Sign in and enter it at the copy that writes.");
  }
}
