package org.barreltally.web.access;

import io.quarkus.arc.Unremovable;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;

/** The session that the request at hand comes with. */
@RequestScoped
@Unremovable
public class SessionAtHand {

  private final HttpServerRequest request;

  @Inject
  SessionAtHand(HttpServerRequest request) {
    this.request = request;
  }

  /** What the browser holds; null where the request comes without. */
  public String secret() {
    Cookie cookie = request.getCookie(SessionCookie.name(request.isSSL()));
    return cookie == null || cookie.getValue().isEmpty() ? null : cookie.getValue();
  }
}
