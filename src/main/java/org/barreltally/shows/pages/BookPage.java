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
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.barreltally.shows.rest.ShowView;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A show is booked. */
@Path("/shows/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class BookPage {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance book(
        Form form, List<Choice> priceLists, List<Choice> states, String currency);
  }

  private final ShowsApi api;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  BookPage(ShowsApi api, Forms forms, BookingDesk desk) {
    this.api = api;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return page(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response booked(MultivaluedMap<String, String> said) {
    return forms.takeJson(
        said,
        BookingShape.class,
        (key, json) -> {
          try {
            Response booked = api.book(key, BookingShape.withHours(json, said, desk.farm()));
            return URI.create("/shows/" + ((ShowView) booked.getEntity()).id());
          } catch (JsonProcessingException e) {
            throw forms.refusal(e);
          }
        },
        this::page);
  }

  private TemplateInstance page(Form form) {
    return Templates.book(form, desk.priceLists(null), desk.firstStates(), desk.currency());
  }
}
