package org.barreltally.pricing.pages;

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
import java.net.URI;
import java.util.List;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.TaxRate;
import org.barreltally.pricing.rest.TaxRatesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The owner's rates of tax. */
@Path("/prices/tax")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class TaxRatesPage {

  private static final List<Column<TaxRate>> COLUMNS =
      List.of(
          Column.by("place", TaxRate::place),
          Column.by("class", TaxRate::productClass),
          Column.by("from", TaxRate::from),
          Column.by("percent", TaxRate::percent));

  @CheckedTemplate(basePath = "prices")
  static class Templates {
    static native TemplateInstance tax(
        Listing<TaxRate> list, Form form, List<Choice> classes, String today);
  }

  private final TaxRatesApi api;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  TaxRatesPage(TaxRatesApi api, Forms forms, PageFarm farm) {
    this.api = api;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return page(Form.blank(), uri);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response entered(MultivaluedMap<String, String> said, @Context UriInfo uri) {
    return forms.take(
        said,
        TaxRatesApi.Entry.class,
        (key, rate) -> {
          api.enter(key, rate);
          return URI.create("/prices/tax");
        },
        form -> page(form, uri));
  }

  private TemplateInstance page(Form form, UriInfo uri) {
    return Templates.tax(
        Listing.of(WholeList.of(api::list), COLUMNS, uri),
        form,
        Choice.of(ProductClass.values(), "prices.class"),
        farm.today().toString());
  }
}
