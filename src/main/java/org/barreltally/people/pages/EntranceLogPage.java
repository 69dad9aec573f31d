package org.barreltally.people.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriBuilder;
import java.util.List;
import org.barreltally.people.EntranceEvent;
import org.barreltally.people.EntranceLog;
import org.barreltally.people.rest.EntranceLogApi;
import org.barreltally.people.rest.PeopleApi;
import org.barreltally.web.Page;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Who came in, who tried, and what was changed about people, newest first. */
@Path("/entrance-log")
@Produces(MediaType.TEXT_HTML)
@Blocking
@RolesAllowed("owner")
public class EntranceLogPage {

  private static final String ROWS = "50";

  @CheckedTemplate(basePath = "people")
  static class Templates {
    static native TemplateInstance log(
        List<EntranceLog.Entry> entries,
        List<Choice> people,
        List<Choice> events,
        Form asked,
        String older);
  }

  private final EntranceLogApi api;
  private final PeopleApi people;

  @Inject
  EntranceLogPage(EntranceLogApi api, PeopleApi people) {
    this.api = api;
    this.people = people;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("person") String person,
      @QueryParam("what") String what,
      @QueryParam("after") String after) {
    Page<EntranceLog.Entry> page = api.list(person, what, ROWS, after);
    return Templates.log(
        page.items(),
        people.list().items().stream()
            .map(one -> new Choice(one.name(), one.displayName()))
            .toList(),
        Choice.of(EntranceEvent.values(), "people.event"),
        Form.with("person", person, "what", what),
        page.next() == null ? null : older(person, what, page.next()));
  }

  private static String older(String person, String what, String next) {
    UriBuilder address = UriBuilder.fromPath("/entrance-log").queryParam("after", next);
    if (person != null) {
      address.queryParam("person", "{person}");
    }
    if (what != null) {
      address.queryParam("what", "{what}");
    }
    return (person == null
            ? what == null ? address.build() : address.build(what)
            : what == null ? address.build(person) : address.build(person, what))
        .toString();
  }
}
