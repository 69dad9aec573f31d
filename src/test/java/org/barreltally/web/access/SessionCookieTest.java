package org.barreltally.web.access;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SessionCookieTest {

  @Test
  void over_https_the_cookie_goes_nowhere_else() {
    assertTrue(SessionCookie.holding("secret", true).isSecure());
    assertFalse(SessionCookie.holding("secret", false).isSecure());
  }

  @Test
  void scripts_never_see_it() {
    assertTrue(SessionCookie.holding("secret", false).isHttpOnly());
    assertTrue(SessionCookie.dropped(true).isHttpOnly());
  }
}
