package org.barreltally.web.problem;

import com.fasterxml.jackson.databind.exc.InvalidDefinitionException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import io.quarkus.security.AuthenticationCompletionException;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.validation.ValidationException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/**
 * Takes every exception of a resource. The kinds listed beside {@code Throwable} are those for
 * which the framework brings mappers of its own, which must not speak.
 */
public class ExceptionProblems {

  private final Problems problems;
  private final ProblemAnswer answer;

  @Inject
  ExceptionProblems(Problems problems, ProblemAnswer answer) {
    this.problems = problems;
    this.answer = answer;
  }

  @ServerExceptionMapper({
    Throwable.class,
    WebApplicationException.class,
    NotFoundException.class,
    ValidationException.class,
    MismatchedInputException.class,
    InvalidDefinitionException.class,
    UnauthorizedException.class,
    ForbiddenException.class,
    AuthenticationFailedException.class,
    AuthenticationCompletionException.class
  })
  public Response answer(Throwable thrown, RoutingContext context) {
    if (thrown instanceof WebApplicationException http && http.getResponse().getStatus() < 400) {
      return http.getResponse();
    }
    return answer.response(problems.of(thrown), context);
  }
}
