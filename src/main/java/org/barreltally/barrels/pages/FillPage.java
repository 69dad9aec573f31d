package org.barreltally.barrels.pages;

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
import org.barreltally.barrels.FillBarrel;
import org.barreltally.barrels.rest.BarrelsApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A barrel was filled. */
@Path("/barrels/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class FillPage {

  @CheckedTemplate(basePath = "barrels")
  static class Templates {
    static native TemplateInstance fill(Form form, BarrelPages.Choices choices, int season);
  }

  private final BarrelsApi barrels;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  FillPage(BarrelsApi barrels, Forms forms, PageFarm farm) {
    this.barrels = barrels;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance fill() {
    return blank(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response filled(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        FillBarrel.class,
        (key, barrel) -> {
          barrels.fill(key, barrel);
          return URI.create("/barrels/" + barrel.tag());
        },
        this::blank);
  }

  private TemplateInstance blank(Form form) {
    return Templates.fill(form, BarrelPages.Choices.now(), farm.today().getYear());
  }
}
