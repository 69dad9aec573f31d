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
import org.barreltally.measure.ColorClass;
import org.barreltally.shows.rest.ShowAffairsApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.OfferedRows;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars are promised to a show before they are packed out, and freed again. */
@Path("/shows/{id}/reservations")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ReservationsPage {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance promise(
        ShowDetails details, Form form, List<Choice> sizes, List<Choice> grades);
  }

  private final ShowsApi api;
  private final ShowAffairsApi affairs;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  ReservationsPage(ShowsApi api, ShowAffairsApi affairs, Forms forms, BookingDesk desk) {
    this.api = api;
    this.affairs = affairs;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response promised(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        OfferedRows.without(said, "lines", "count"),
        ShowAffairsApi.Reserve.class,
        (key, reserve) -> {
          affairs.reserve(id, key, said.getFirst("version"), reserve);
          return URI.create("/shows/" + id + "#promised");
        },
        form -> page(id, form));
  }

  @POST
  @Path("/{reservation}/release")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response freed(
      @PathParam("id") UUID id,
      @PathParam("reservation") UUID reservation,
      MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        ShowAffairsApi.Nothing.class,
        (key, nothing) -> {
          affairs.release(id, reservation, nothing);
          return URI.create("/shows/" + id + "#promised");
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    return Templates.promise(
        (ShowDetails) api.at(id).getEntity(),
        form,
        desk.sizes(),
        Choice.of(ColorClass.values(), "common.grade"));
  }
}
