package org.barreltally.web.problem;

import com.fasterxml.jackson.core.JacksonException;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.ConstraintViolationException;
import jakarta.ws.rs.WebApplicationException;
import java.io.CharConversionException;
import java.sql.SQLException;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.people.TooManyAttempts;
import org.barreltally.refusal.Refusal;
import org.jboss.logging.Logger;

/**
 * Says for every exception which problem it is. What a person can mend is said in words; anything
 * else is a defect: logged with its stack under a random number, which is all that is shown.
 */
@ApplicationScoped
public class Problems {

  private static final Logger LOG = Logger.getLogger(Problems.class);

  private static final Map<Refusal.Kind, Integer> STATUS =
      Map.of(
          Refusal.Kind.INVALID, 400,
          Refusal.Kind.RULE, 422,
          Refusal.Kind.CONFLICT, 409,
          Refusal.Kind.NOT_FOUND, 404,
          Refusal.Kind.STALE, 412,
          Refusal.Kind.FORBIDDEN, 403);

  private final JsonProblems json;

  @Inject
  Problems(JsonProblems json) {
    this.json = json;
  }

  /** The problem of an exception. Never throws; an unexpected exception is logged here. */
  public Problem of(Throwable thrown) {
    return known(thrown).orElseGet(() -> defect(thrown));
  }

  private Optional<Problem> known(Throwable thrown) {
    Optional<Refused> refused = cause(thrown, Refused.class);
    if (refused.isPresent()) {
      return refused.map(Refused::problem);
    }
    Optional<JacksonException> misread = cause(thrown, JacksonException.class);
    if (misread.isPresent()) {
      return json.of(misread.get());
    }
    if (cause(thrown, CharConversionException.class).isPresent()) {
      return Optional.of(JsonProblems.notUtf8());
    }
    Optional<Problem> found =
        cause(thrown, Refusal.class)
            .map(Problems::of)
            .or(() -> cause(thrown, TooManyAttempts.class).map(Problems::of))
            .or(() -> cause(thrown, ConstraintViolationException.class).flatMap(Violations::of))
            .or(() -> cause(thrown, SQLException.class).flatMap(DatabaseProblems::of));
    if (found.isPresent()) {
      return found;
    }
    if (thrown instanceof UnauthorizedException
        || thrown instanceof AuthenticationFailedException) {
      return Optional.of(HttpProblems.of(401));
    }
    if (thrown instanceof ForbiddenException) {
      return Optional.of(HttpProblems.of(403));
    }
    if (thrown instanceof WebApplicationException http && http.getResponse().getStatus() < 500) {
      return Optional.of(HttpProblems.of(http.getResponse()));
    }
    return Optional.empty();
  }

  static Problem of(Refusal refusal) {
    return new Problem(
        STATUS.get(refusal.kind()),
        refusal.code(),
        refusal.title(),
        refusal.detail(),
        refusal.errors(),
        Map.of());
  }

  private static Problem of(TooManyAttempts attempts) {
    long seconds = attempts.retryAfter().toSeconds();
    return new Problem(
            429,
            "too-many-attempts",
            "Too many attempts",
            "Too many wrong passwords were given for this name. Wait "
                + seconds
                + " seconds, then try again.")
        .retryAfter(seconds);
  }

  private static Problem defect(Throwable thrown) {
    String incident = UUID.randomUUID().toString();
    LOG.errorf(thrown, "Incident %s", incident);
    return new Problem(
        500,
        "defect",
        "Something is broken here",
        "This is a fault of the program, not of what you sent. Nothing was stored. Whoever looks"
            + " after it finds the cause in its log under incident "
            + incident
            + ".");
  }

  /** The first of this kind among the exception and its causes. */
  private static <T extends Throwable> Optional<T> cause(Throwable thrown, Class<T> kind) {
    int depth = 0;
    for (Throwable t = thrown; t != null && depth < 20; t = t.getCause()) {
      if (kind.isInstance(t)) {
        return Optional.of(kind.cast(t));
      }
      depth++;
    }
    return Optional.empty();
  }
}
