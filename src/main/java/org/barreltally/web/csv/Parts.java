package org.barreltally.web.csv;

import io.quarkus.narayana.jta.QuarkusTransaction;
import org.barreltally.web.PageRequest;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;

/** The parts of a list that follow its first, asked for one by one. */
@FunctionalInterface
interface Parts {

  /**
   * The part that follows.
   *
   * @param next what the part before named as next
   */
  Object following(String next);

  /** Of a list of which one part was asked for. */
  static Parts none() {
    return next -> null;
  }

  /**
   * Of the list that a request asks for: the resource is called again as the request called it, but
   * for where the part begins and for its size, which is the largest there is. Its interceptors,
   * and so its roles, hold at every call; each part is read in a transaction of its own, which
   * leaves nothing in memory behind.
   */
  static Parts after(ResteasyReactiveRequestContext call, Listing listing) {
    Object resource = call.getEndpointInstance();
    Object[] parameters = call.getParameters().clone();
    parameters[listing.limitAt()] = Integer.toString(PageRequest.LIMIT_MAX);
    return next -> {
      parameters[listing.afterAt()] = next;
      return QuarkusTransaction.requiringNew()
          .call(() -> call.getTarget().getInvoker().invoke(resource, parameters));
    };
  }
}
