package org.barreltally.web.problem;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** Turns away, before anything is read, what is too large or could not be stored anyway. */
@ApplicationScoped
public class RequestLimits {

  /** The largest body, in bytes: far above a day's sales or a year's opening stock. */
  static final long BODY_BYTES_MAX = 1_000_000;

  private static final int PRIORITY = 300;

  private final ProblemAnswer answer;

  private static final long BYTES_READ_AWAY_MAX = 3_000_000;

  @Inject
  RequestLimits(ProblemAnswer answer) {
    this.answer = answer;
  }

  void register(@Observes Filters filters) {
    filters.register(this::check, PRIORITY);
  }

  private void check(RoutingContext context) {
    if (context.request().uri().contains("%00")) {
      answer.send(DatabaseProblems.badCharacter(), context);
    } else if (saidLength(context) > BODY_BYTES_MAX) {
      refuseTooLarge(context);
    } else {
      context.next();
    }
  }

  /**
   * A body somewhat too large is read to its end and thrown away before the answer, for a caller
   * who is still sending would not hear it; one far too large is cut off.
   */
  private void refuseTooLarge(RoutingContext context) {
    if (saidLength(context) <= BYTES_READ_AWAY_MAX) {
      context.request().handler(thrownAway -> {});
      context.request().endHandler(ended -> answer.send(HttpProblems.of(413), context));
      context.request().resume();
    } else {
      context.response().putHeader(HttpHeaders.CONNECTION, "close");
      context.response().endHandler(ended -> context.request().connection().close());
      answer.send(HttpProblems.of(413), context);
    }
  }

  private static long saidLength(RoutingContext context) {
    String length = context.request().getHeader(HttpHeaders.CONTENT_LENGTH);
    return length != null && length.matches("[0-9]{1,18}") ? Long.parseLong(length) : 0;
  }
}
