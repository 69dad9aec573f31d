package org.barreltally.web.access;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Map;

/**
 * Tells browsers what an answer may do: nothing from elsewhere, no script or style within a page,
 * in nobody's frame, not kept after signing out.
 */
@ApplicationScoped
class BrowserHeaders {

  private static final int PRIORITY = 400;

  private static final String CONTENT_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self';"
          + " connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self';"
          + " base-uri 'none'; frame-ancestors 'none'";

  private static final Map<String, String> HEADERS =
      Map.of(
          "Content-Security-Policy", CONTENT_POLICY,
          "X-Content-Type-Options", "nosniff",
          "X-Frame-Options", "DENY",
          "Referrer-Policy", "same-origin",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cross-Origin-Resource-Policy", "same-origin");

  void register(@Observes Filters filters) {
    filters.register(BrowserHeaders::add, PRIORITY);
  }

  private static void add(RoutingContext context) {
    context.addHeadersEndHandler(
        sent -> {
          MultiMap headers = context.response().headers();
          HEADERS.forEach(headers::set);
          if (!headers.contains("Cache-Control")) {
            headers.set("Cache-Control", "no-store");
          }
        });
    context.next();
  }
}
