package org.barreltally.web.problem;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Lets so many requests wait at once and turns the next away at once, with a plain answer and when
 * to come again: whoever waits longer than anybody has patience for sends once more and makes the
 * queue longer. Whether the program lives can always be asked.
 */
@ApplicationScoped
public class Crowd {

  /** Before anything else looks at the request. */
  private static final int PRIORITY = 390;

  private static final int SECONDS_AWAY = 3;

  private final ProblemAnswer answer;
  private final int most;
  private final AtomicInteger inside = new AtomicInteger();

  /**
   * @param most requests under way at once, those that wait for a thread or the database included
   */
  @Inject
  Crowd(
      ProblemAnswer answer,
      @ConfigProperty(name = "barreltally.requests-at-once", defaultValue = "200") int most) {
    this.answer = answer;
    this.most = most;
  }

  void register(@Observes Filters filters) {
    filters.register(this::enter, PRIORITY);
  }

  private void enter(RoutingContext context) {
    if (context.normalizedPath().startsWith("/q/health")) {
      context.next();
    } else if (inside.incrementAndGet() > most) {
      inside.decrementAndGet();
      answer.send(full(), context);
    } else {
      context.addEndHandler(ended -> inside.decrementAndGet());
      context.next();
    }
  }

  private static Problem full() {
    return new Problem(
            503,
            "try-again",
            "Busy just now",
            "Too many requests are waiting. Send the same request with the same id again in a"
                + " moment; it is done once.")
        .retryAfter(SECONDS_AWAY);
  }
}
