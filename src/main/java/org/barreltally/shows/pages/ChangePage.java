package org.barreltally.shows.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
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
import java.util.Set;
import java.util.UUID;
import org.barreltally.shows.ShowChangedSince;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowView;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What is booked for a show is changed, if nobody else changed it meanwhile. */
@Path("/shows/{id}/change")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ChangePage {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance change(
        ShowView show, Form form, List<Choice> priceLists, String currency);
  }

  private static final Set<String> BESIDE = Set.of("token", "form", "version", "allowOverlap");

  private final ShowsApi api;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  ChangePage(ShowsApi api, Forms forms, BookingDesk desk) {
    this.api = api;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance filled(@PathParam("id") UUID id) {
    ShowView show = show(id);
    return page(show, BookingShape.filled(show.booking(), show.version(), desk.farm()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response changed(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.takeJson(
        said,
        BookingShape.class,
        (key, json) -> {
          try {
            api.change(
                id,
                said.getFirst("version"),
                BookingShape.withNulls(BookingShape.withHours(json, said, desk.farm())));
            return URI.create("/shows/" + id);
          } catch (JsonProcessingException e) {
            throw forms.refusal(e);
          } catch (ShowChangedSince e) {
            if (!stands(id, said)) {
              throw e;
            }
            return URI.create("/shows/" + id);
          }
        },
        form -> page(show(id), form));
  }

  /** Whether all of it stands booked already, as after a second click. */
  private boolean stands(UUID id, MultivaluedMap<String, String> said) {
    ShowView show = show(id);
    Form now = BookingShape.filled(show.booking(), show.version(), desk.farm());
    return said.keySet().stream()
        .filter(field -> !BESIDE.contains(field) && !field.endsWith(".unit"))
        .allMatch(field -> now.value(field).equals(said.getFirst(field).strip()));
  }

  private ShowView show(UUID id) {
    return ((ShowDetails) api.at(id).getEntity()).show();
  }

  private TemplateInstance page(ShowView show, Form form) {
    List<Choice> lists = desk.priceLists(show.booking().priceList());
    return Templates.change(show, form, lists, desk.currency());
  }
}
