package org.barreltally.barrels.pages;

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
import java.time.LocalDate;
import java.util.List;
import org.barreltally.barrels.Emptying;
import org.barreltally.barrels.rest.BarrelApi;
import org.barreltally.barrels.rest.BarrelRequests;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Syrup left a barrel without being packed or sold: thrown away, or drawn as a sample. */
@Path("/barrels/{tag}/take-out")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class TakeOutPage {

  @CheckedTemplate(basePath = "barrels")
  static class Templates {
    static native TemplateInstance takeOut(
        BarrelView barrel, Form form, List<Choice> causes, LocalDate today);
  }

  private final BarrelApi api;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  TakeOutPage(BarrelApi api, Forms forms, PageFarm farm) {
    this.api = api;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance takeOut(@PathParam("tag") String tag) {
    return page(tag, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response takenOut(@PathParam("tag") String tag, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        BarrelRequests.WriteOff.class,
        (key, writeOff) -> {
          api.writeOff(tag, key, null, writeOff);
          return BarrelPage.address(tag);
        },
        form -> page(tag, form));
  }

  private TemplateInstance page(String tag, Form form) {
    return Templates.takeOut(
        (BarrelView) api.at(tag).getEntity(),
        form,
        Choice.of(Emptying.Cause.values(), "barrels.cause"),
        farm.today());
  }
}
