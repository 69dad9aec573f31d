package org.barreltally.sugarbush.boiling.pages;

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
import org.barreltally.sugarbush.boiling.StartBoil;
import org.barreltally.sugarbush.boiling.rest.BoilsApi;
import org.barreltally.sugarbush.boiling.rest.SugarhouseApi;
import org.barreltally.sugarbush.rest.BushesApi;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A boil is begun. */
@Path("/sugarhouse/boil")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NewBoilPage {

  @CheckedTemplate(basePath = "sugarhouse")
  static class Templates {
    static native TemplateInstance newBoil(Form form, LogChoices choices);
  }

  private final BoilsApi boils;
  private final BushesApi bushes;
  private final SugarhouseApi house;
  private final Forms forms;

  @Inject
  NewBoilPage(BoilsApi boils, BushesApi bushes, SugarhouseApi house, Forms forms) {
    this.boils = boils;
    this.bushes = bushes;
    this.house = house;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return shown(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response begun(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        StartBoil.class,
        (key, boil) ->
            URI.create(
                "/sugarhouse/boils/" + ReadAnew.identity(boils.start(key, boil).getLocation())),
        this::shown);
  }

  private TemplateInstance shown(Form form) {
    return Templates.newBoil(form, LogChoices.of(bushes, house));
  }
}
