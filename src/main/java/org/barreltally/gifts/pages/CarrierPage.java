package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.barreltally.gifts.CarrierTable;
import org.barreltally.gifts.rest.CarriersApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A carrier's zones and days are written off its own table; next fall's begin with this one's. */
@Path("/carriers/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class CarrierPage {

  private static final URI AFTERWARDS = URI.create("/gift-boxes#carriers");

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance carrier(Form form, List<CarrierText.DayBox> weekdays, int zones);
  }

  private final CarriersApi api;
  private final Forms forms;

  @Inject
  CarrierPage(CarriersApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@QueryParam("as") String name) {
    return api.list(null).items().stream()
        .filter(table -> table.name().equals(name))
        .findFirst()
        .map(CarrierText::of)
        .map(this::page)
        .orElseGet(() -> page(Form.blank()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response tell(MultivaluedMap<String, String> said) {
    return forms.take(
        CarrierText.apart(said),
        CarrierTable.class,
        (key, table) -> {
          api.tell(key, table);
          return AFTERWARDS;
        },
        this::page);
  }

  private TemplateInstance page(Form form) {
    return Templates.carrier(form, CarrierText.weekdays(form), CarrierText.zones(form));
  }
}
