package org.barreltally.web.access;

import static java.time.ZoneOffset.UTC;
import static java.time.format.DateTimeFormatter.RFC_1123_DATE_TIME;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Map;

/**
 * Tells browsers what an answer may do: nothing from elsewhere, no script or style within a page,
 * in nobody's frame, not kept after signing out; and when it was given (RFC 9110, 6.6.1), by which
 * a phone learns how far its clock is off.
 */
@ApplicationScoped
class BrowserHeaders {

  private static final int PRIORITY = 400;

  private static final String CONTENT_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self';"
          + " connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self';"
          + " object-src 'none'; base-uri 'none'; frame-ancestors 'none'";

  private static final Map<String, String> HEADERS =
      Map.of(
          "Content-Security-Policy", CONTENT_POLICY,
          "X-Content-Type-Options", "nosniff",
          "X-Frame-Options", "DENY",
          "Referrer-Policy", "same-origin",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cross-Origin-Resource-Policy", "same-origin");

  private final Clock clock;

  @Inject
  BrowserHeaders(Clock clock) {
    this.clock = clock;
  }

  void register(@Observes Filters filters) {
    filters.register(this::add, PRIORITY);
  }

  private void add(RoutingContext context) {
    context.addHeadersEndHandler(
        sent -> {
          MultiMap headers = context.response().headers();
          HEADERS.forEach(headers::set);
          headers.set("Date", RFC_1123_DATE_TIME.format(clock.instant().atOffset(UTC)));
          if (!headers.contains("Cache-Control")) {
            headers.set("Cache-Control", "no-store");
          }
        });
    context.next();
  }
}
