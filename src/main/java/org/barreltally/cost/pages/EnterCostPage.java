package org.barreltally.cost.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.RolesAllowed;
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
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.cost.EnterCost;
import org.barreltally.cost.rest.CostsApi;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A cost is entered, with what it belongs to. */
@Path("/costs/new")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "bookkeeper"})
@Blocking
public class EnterCostPage {

  @CheckedTemplate(basePath = "costs")
  static class Templates {
    static native TemplateInstance enter(Form form, CostChoices choices);
  }

  private final CostsApi api;
  private final ContainersApi containers;
  private final ShowsApi shows;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  EnterCostPage(
      CostsApi api, ContainersApi containers, ShowsApi shows, PageFarm farm, Forms forms) {
    this.api = api;
    this.containers = containers;
    this.shows = shows;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return shown(Form.with("on", farm.today()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response entered(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        EnterCost.class,
        (key, cost) -> {
          api.enter(key, cost);
          return URI.create("/costs");
        },
        this::shown);
  }

  private TemplateInstance shown(Form form) {
    return Templates.enter(form, CostChoices.of(containers, shows, farm));
  }
}
