package org.barreltally.web.problem;

import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** Answers what fails or finds nothing before or beside the resources. */
@ApplicationScoped
public class RouteProblems {

  private final Problems problems;
  private final ProblemAnswer answer;

  @Inject
  RouteProblems(Problems problems, ProblemAnswer answer) {
    this.problems = problems;
    this.answer = answer;
  }

  void register(@Observes Router router) {
    router.route().order(Integer.MIN_VALUE + 10).failureHandler(this::answer);
    router.route().last().handler(context -> answer.send(HttpProblems.of(404), context));
  }

  private void answer(RoutingContext context) {
    boolean refused = context.statusCode() >= 400 && context.statusCode() < 500;
    answer.send(
        context.failure() == null && refused
            ? HttpProblems.of(context.statusCode())
            : problems.of(causeOf(context)),
        context);
  }

  private static Throwable causeOf(RoutingContext context) {
    return context.failure() != null
        ? context.failure()
        : new IllegalStateException("failed with status " + context.statusCode());
  }
}
