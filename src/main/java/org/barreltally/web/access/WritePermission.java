package org.barreltally.web.access;

import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.Set;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Role;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Lets each role change what is its part; everyone reads, and sees to their own sign-in. */
class WritePermission {

  private static final Logger LOG = Logger.getLogger(WritePermission.class);
  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
  private static final Set<String> OWN_AFFAIRS =
      Set.of(
          "/sign-in",
          "/sign-in/back",
          "/sign-out",
          "/view",
          "/me",
          "/me/codes",
          "/me/codes/confirm",
          "/me/codes/stop",
          "/api/me/password",
          "/api/me/codes",
          "/api/me/codes/confirm",
          "/api/me/codes/stop",
          "/me/sessions/end",
          "/api/me/sessions/end",
          "/api/table/pairing");

  private final CurrentUser user;

  @Inject
  WritePermission(CurrentUser user) {
    this.user = user;
  }

  @ServerRequestFilter
  void check(ContainerRequestContext request) {
    String path = request.getUriInfo().getRequestUri().getRawPath();
    if (READING.contains(request.getMethod())
        || OWN_AFFAIRS.contains(path)
        || RoleRules.mayChange(role(), path)) {
      return;
    }
    LOG.infof(
        "Refused by role: %s (%s) asked %s %s", user.id(), user.role(), request.getMethod(), path);
    if (!user.mayWrite()) {
      throw new ReadingOnly(user.role());
    }
    throw new NotYourPart(role(), RoleRules.others(path));
  }

  private Role role() {
    return Role.of(user.role());
  }
}
