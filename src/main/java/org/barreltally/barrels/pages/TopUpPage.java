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
import org.barreltally.barrels.ToppingUp;
import org.barreltally.barrels.rest.BarrelApi;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A barrel was topped up, and the whole heated again. */
@Path("/barrels/{tag}/top-up")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class TopUpPage {

  @CheckedTemplate(basePath = "barrels")
  static class Templates {
    static native TemplateInstance topUp(
        BarrelView barrel, Form form, BarrelPages.Choices choices, LocalDate today);
  }

  private final BarrelApi api;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  TopUpPage(BarrelApi api, Forms forms, PageFarm farm) {
    this.api = api;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance topUp(@PathParam("tag") String tag) {
    return page(tag, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response toppedUp(@PathParam("tag") String tag, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        ToppingUp.TopUp.class,
        (key, topUp) -> {
          api.topUp(tag, key, null, topUp);
          return BarrelPage.address(tag);
        },
        form -> page(tag, form));
  }

  private TemplateInstance page(String tag, Form form) {
    return Templates.topUp(
        (BarrelView) api.at(tag).getEntity(), form, BarrelPages.Choices.now(), farm.today());
  }
}
