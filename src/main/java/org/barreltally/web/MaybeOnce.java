package org.barreltally.web;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.util.function.Supplier;

/**
 * For requests that move neither stock nor money: with an Idempotency-Key a repeat gets the first
 * answer, without one the request is simply done.
 */
@ApplicationScoped
public class MaybeOnce {

  private final Once once;

  MaybeOnce(Once once) {
    this.once = once;
  }

  /** Does what is asked, once where an id is given. */
  public Response answer(String key, Object request, Supplier<Answer> action) {
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
