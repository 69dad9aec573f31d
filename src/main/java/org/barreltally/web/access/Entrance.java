package org.barreltally.web.access;

import io.vertx.ext.web.RoutingContext;

/** Which door a request comes to, by its path alone. */
enum Entrance {
  /** Health and the files of the sign-in page: nobody is asked who they are. */
  OPEN,
  /** REST, its description and the figures for operators: HTTP Basic or a bearer token. */
  MACHINE,
  /** Everything else: a browser with a session. */
  PAGE;

  static Entrance of(RoutingContext context) {
    String path = context.normalizedPath();
    if (isUnder(path, "/q/health") || isUnder(path, "/assets")) {
      return OPEN;
    }
    return isUnder(path, "/api")
            || isUnder(path, "/q")
            || path.equals("/openapi")
            || path.startsWith("/openapi.")
        ? MACHINE
        : PAGE;
  }

  private static boolean isUnder(String path, String root) {
    return path.equals(root) || path.startsWith(root + "/");
  }
}
