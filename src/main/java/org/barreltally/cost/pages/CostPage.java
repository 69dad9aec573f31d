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
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.barreltally.cost.Cost;
import org.barreltally.cost.rest.CostsApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One cost, and taking it back. */
@Path("/costs/{id}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "bookkeeper"})
@Blocking
public class CostPage {

  @CheckedTemplate(basePath = "costs")
  static class Templates {
    static native TemplateInstance one(Cost cost, Form form);
  }

  private final CostsApi api;
  private final Forms forms;

  @Inject
  CostPage(CostsApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("id") UUID id) {
    return Templates.one(api.one(id), Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response takenBack(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        CostsApi.Because.class,
        (key, why) -> {
          api.reverse(id, key, why);
          return URI.create("/costs/" + id);
        },
        form -> Templates.one(api.one(id), form));
  }
}
