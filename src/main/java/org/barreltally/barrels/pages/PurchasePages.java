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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.barrels.Purchases;
import org.barreltally.barrels.rest.BarrelRequests;
import org.barreltally.barrels.rest.PurchasesApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Syrup bought from others. */
@Path("/purchases")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class PurchasePages {

  private static final List<Column<Purchases.Bought>> COLUMNS =
      List.of(
          Column.by("on", Purchases.Bought::on),
          Column.by("lot", Purchases.Bought::lot),
          Column.by("supplier", Purchases.Bought::name));

  @CheckedTemplate(basePath = "barrels")
  static class Templates {
    static native TemplateInstance purchases(Listing<Purchases.Bought> list);

    static native TemplateInstance buy(
        Form form, BarrelPages.Choices choices, int season, LocalDate today);
  }

  private final PurchasesApi api;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  PurchasePages(PurchasesApi api, Forms forms, PageFarm farm) {
    this.api = api;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return Templates.purchases(Listing.of(WholeList.of(api::list), COLUMNS, uri));
  }

  @GET
  @Path("/new")
  @Operation(hidden = true)
  public TemplateInstance buy() {
    return page(Form.blank());
  }

  @POST
  @Path("/new")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response bought(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        BarrelRequests.Purchase.class,
        (key, purchase) -> {
          api.buy(key, purchase);
          return BarrelPage.address(purchase.tag());
        },
        this::page);
  }

  private TemplateInstance page(Form form) {
    return Templates.buy(form, BarrelPages.Choices.now(), farm.today().getYear(), farm.today());
  }
}
