package org.barreltally.web.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SessionCookieTest {

  @Test
  void over_https_the_cookie_goes_nowhere_else() {
    assertTrue(SessionCookie.holding("secret", true).isSecure());
    assertFalse(SessionCookie.holding("secret", false).isSecure());
  }

  /** What browsers ask of a name that begins with __Host-: RFC 6265bis, 4.1.3.2. */
  @Test
  void over_https_it_is_kept_to_this_host() {
    var cookie = SessionCookie.holding("secret", true);
    assertTrue(cookie.getName().startsWith("__Host-"));
    assertEquals("/", cookie.getPath());
    assertNull(cookie.getDomain());
    assertFalse(SessionCookie.name(false).startsWith("__"));
  }

  @Test
  void scripts_never_see_it() {
    assertTrue(SessionCookie.holding("secret", false).isHttpOnly());
    assertTrue(SessionCookie.dropped(true).isHttpOnly());
  }
}
