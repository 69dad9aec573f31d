package org.barreltally.web.access;

import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.Set;
import org.barreltally.people.CurrentUser;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Lets only roles that may write do anything but read; everyone may see to their own sign-in. */
class WritePermission {

  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
  private static final Set<String> OWN_AFFAIRS =
      Set.of("/sign-in", "/sign-out", "/api/me/password", "/api/table/pairing");

  private final CurrentUser user;

  @Inject
  WritePermission(CurrentUser user) {
    this.user = user;
  }

  @ServerRequestFilter
  void check(ContainerRequestContext request) {
    if (READING.contains(request.getMethod())
        || OWN_AFFAIRS.contains(request.getUriInfo().getPath())
        || user.mayWrite()) {
      return;
    }
    throw new ReadingOnly(user.role());
  }
}
