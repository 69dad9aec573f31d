package org.barreltally.web.access;

import jakarta.ws.rs.core.NewCookie;
import org.barreltally.people.PageSessions;

/**
 * The cookie that holds a session's secret. Scripts cannot read it; another site's form or picture
 * does not carry it, a link followed from elsewhere does (Lax).
 */
final class SessionCookie {

  static final String NAME = "barreltally-session";

  /**
   * Over HTTPS it has a name of its own: browsers keep cookies of one machine together whatever the
   * port, and let none that came over HTTP, or for other hosts as well, have a name that begins so
   * (RFC 6265bis, 4.1.3.2).
   */
  static final String NAME_HTTPS = "__Host-barreltally-session";

  static String name(boolean https) {
    return https ? NAME_HTTPS : NAME;
  }

  private SessionCookie() {}

  /**
   * @param https whether the browser came over HTTPS, so that the cookie goes nowhere else
   */
  static NewCookie holding(String secret, boolean https) {
    return cookie(secret, https, (int) PageSessions.longest().toSeconds());
  }

  /** Makes the browser drop the cookie. */
  static NewCookie dropped(boolean https) {
    return cookie("", https, 0);
  }

  private static NewCookie cookie(String value, boolean https, int seconds) {
    return new NewCookie.Builder(name(https))
        .value(value)
        .path("/")
        .maxAge(seconds)
        .httpOnly(true)
        .secure(https)
        .sameSite(NewCookie.SameSite.LAX)
        .build();
  }
}
