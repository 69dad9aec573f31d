package org.barreltally.web.access;

import io.vertx.ext.web.RoutingContext;

/** Which door a request comes to, by its path alone. */
enum Entrance {
  /**
   * Health, the files of the sign-in page and of the show table, how to trust this program, and
   * what a jar's code leads to: nobody is asked who they are.
   */
  OPEN,
  /** REST, its description and the figures for operators: HTTP Basic or a bearer token. */
  MACHINE,
  /** Everything else: a browser with a session. */
  PAGE;

  static Entrance of(RoutingContext context) {
    String path = context.normalizedPath();
    if (isUnder(path, "/q/health")
        || isUnder(path, "/assets")
        || isUnder(path, "/table")
        || isUnder(path, "/webjars")
        || isUnder(path, "/jar")
        || isUnder(path, "/lot")
        || isUnder(path, "/phones/trust")
        || path.equals("/api/table/pairing")) {
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
