package org.barreltally.web.access;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.Set;
import org.barreltally.web.problem.Problem;
import org.barreltally.web.problem.ProblemAnswer;

/**
 * Refuses what another site makes a browser send. A browser says where a request was made: in
 * Sec-Fetch-Site (W3C Fetch Metadata), or, where that is not sent, in Origin. Scripts send neither.
 * This covers the sign-in form too, so that nobody is signed in as someone else.
 */
@ApplicationScoped
class CrossSite {

  private static final int PRIORITY = 200;
  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
  private static final Set<String> OWN = Set.of("same-origin", "none");

  private final ProblemAnswer answer;

  @Inject
  CrossSite(ProblemAnswer answer) {
    this.answer = answer;
  }

  void register(@Observes Filters filters) {
    filters.register(this::check, PRIORITY);
  }

  private void check(RoutingContext context) {
    if (isOwn(context.request())) {
      context.next();
      return;
    }
    answer.send(
        new Problem(
            403,
            "cross-site",
            "Sent from another site",
            "This was sent from a page of another site, so it was not done. Open the page here"
                + " and send it from there."),
        context);
  }

  private static boolean isOwn(HttpServerRequest request) {
    if (READING.contains(request.method().name())) {
      return true;
    }
    String site = request.getHeader("Sec-Fetch-Site");
    if (site != null) {
      return OWN.contains(site);
    }
    String origin = request.getHeader("Origin");
    return origin == null || sameHost(origin, request);
  }

  private static boolean sameHost(String origin, HttpServerRequest request) {
    try {
      String authority = URI.create(origin).getRawAuthority();
      return authority != null && authority.equalsIgnoreCase(request.getHeader("Host"));
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
