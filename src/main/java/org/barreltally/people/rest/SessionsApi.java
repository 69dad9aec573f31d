package org.barreltally.people.rest;

import jakarta.inject.Inject;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.PageSessions;
import org.barreltally.web.access.SessionAtHand;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Where the person who asks is signed in to pages. */
@Path("/api/me/sessions")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "People")
public class SessionsApi {

  /** All sessions of a person; there are never more than one answer holds. */
  public record SessionList(List<PageSessions.Open> items) {}

  /** The present password, and which session is to end: all but the one that asks without it. */
  public record Ending(String current, String session) {}

  private final CurrentUser user;
  private final PageSessions sessions;
  private final SessionAtHand here;

  @Inject
  SessionsApi(CurrentUser user, PageSessions sessions, SessionAtHand here) {
    this.user = user;
    this.sessions = sessions;
    this.here = here;
  }

  @GET
  @Operation(summary = "Where the person is signed in to pages, the last used first")
  public SessionList list() {
    return new SessionList(sessions.of(user.id(), here.secret()));
  }

  @POST
  @Path("/end")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "End one of the person's sessions, or all but the one that asks")
  public void end(@NotNull(message = "Send the record as JSON.") Ending said) {
    String session = said.session() == null || said.session().isBlank() ? null : said.session();
    sessions.end(user.name(), said.current(), session, here.secret());
  }
}
