package org.barreltally.people.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.stream.Stream;
import org.barreltally.people.PageSessions;
import org.barreltally.people.rest.SessionsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Show;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Where one is signed in, and ending it elsewhere. */
@Path("/me/sessions")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SessionsPage {

  @CheckedTemplate(basePath = "people")
  static class Templates {
    static native TemplateInstance sessions(
        List<PageSessions.Open> sessions, List<Choice> which, int most, Form form);
  }

  private final SessionsApi api;
  private final Forms forms;

  @Inject
  SessionsPage(SessionsApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    return show(Form.blank());
  }

  private TemplateInstance show(Form form) {
    List<PageSessions.Open> sessions = api.list().items();
    return Templates.sessions(sessions, which(sessions), PageSessions.most(), form);
  }

  private static List<Choice> which(List<PageSessions.Open> sessions) {
    return Stream.concat(
            Stream.of(new Choice("", Words.of("people.sessions-others"))),
            sessions.stream()
                .filter(session -> !session.here())
                .map(session -> new Choice(session.id(), Show.time(session.since()))))
        .toList();
  }

  @POST
  @Path("/end")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response end(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SessionsApi.Ending.class,
        (key, ending) -> {
          api.end(ending);
          return URI.create("/me/sessions");
        },
        form -> show(form.without("current")));
  }
}
