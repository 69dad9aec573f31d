package org.barreltally.shows.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.shows.EnterAward;
import org.barreltally.shows.rest.AwardsApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Classes entered at a show, and what was won. */
@Path("/shows/{id}/awards")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class AwardsPage {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance awards(ShowDetails details, Form form, List<Choice> sizes);
  }

  private final ShowsApi api;
  private final AwardsApi awards;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  AwardsPage(ShowsApi api, AwardsApi awards, Forms forms, BookingDesk desk) {
    this.api = api;
    this.awards = awards;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response entered(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        EnterAward.class,
        (key, award) -> {
          awards.enter(id, key, said.getFirst("version"), award);
          return URI.create("/shows/" + id + "/awards");
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    return Templates.awards((ShowDetails) api.at(id).getEntity(), form, desk.sizes());
  }
}
