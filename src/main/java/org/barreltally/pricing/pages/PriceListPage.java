package org.barreltally.pricing.pages;

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
import java.util.UUID;
import org.barreltally.pricing.rest.PriceListApi;
import org.barreltally.pricing.rest.PriceListView;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One price list with its deals and papers; it never changes, but may be withdrawn. */
@Path("/prices/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class PriceListPage {

  @CheckedTemplate(basePath = "prices")
  static class Templates {
    static native TemplateInstance one(PriceListView list);

    static native TemplateInstance withdraw(PriceListView list, String standing, Form form);
  }

  private final PriceListApi api;
  private final Forms forms;

  @Inject
  PriceListPage(PriceListApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id) {
    return Templates.one((PriceListView) api.one(id).getEntity());
  }

  @GET
  @Path("/withdraw")
  @Operation(hidden = true)
  public TemplateInstance withdraw(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Path("/withdraw")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response withdrawn(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        PriceListApi.Withdrawal.class,
        (key, why) -> {
          api.withdraw(id, said.getFirst("standing"), why);
          return URI.create("/prices/" + id);
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    Response read = api.one(id);
    return Templates.withdraw(
        (PriceListView) read.getEntity(), read.getEntityTag().getValue(), form);
  }
}
