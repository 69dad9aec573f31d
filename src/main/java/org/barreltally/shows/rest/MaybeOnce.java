package org.barreltally.shows.rest;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.util.function.Supplier;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;

/**
 * For requests that move neither stock nor money: with an Idempotency-Key a repeat gets the first
 * answer, without one the request is simply done.
 */
@ApplicationScoped
class MaybeOnce {

  private final Once once;

  MaybeOnce(Once once) {
    this.once = once;
  }

  Response answer(String key, Object request, Supplier<Answer> action) {
    if (key != null) {
      return once.answer(key, request, action);
    }
    Answer answer = QuarkusTransaction.joiningExisting().call(action::get);
    return Response.status(answer.status())
        .location(answer.location())
        .entity(answer.body())
        .build();
  }
}
