package org.barreltally.bulk.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.UUID;
import org.barreltally.bulk.Figures;
import org.barreltally.bulk.rest.BulkSaleView;
import org.barreltally.bulk.rest.BulkSalesApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Barrels that were sold whole. */
@Path("/bulk-sales")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class BulkSalePages implements MenuEntry {

  private static final List<Column<BulkSaleView>> COLUMNS =
      List.of(
          Column.by("on", BulkSaleView::on),
          Column.by("tag", BulkSaleView::tag),
          Column.by("buyer", sale -> sale.buyer().name()),
          Column.by("amount", sale -> sale.amount().amount()));

  @CheckedTemplate(basePath = "bulk")
  static class Templates {
    static native TemplateInstance list(Listing<BulkSaleView> list);

    static native TemplateInstance sale(BulkSaleView sale, List<Reading> readings);
  }

  /** A line of the comparison of the three readings. */
  public record Reading(String words, Figures figures) {}

  private final BulkSalesApi api;

  @Inject
  BulkSalePages(BulkSalesApi api) {
    this.api = api;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return Templates.list(Listing.of(WholeList.of(api::list), COLUMNS, uri));
  }

  @GET
  @Path("/{id}")
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("id") UUID id) {
    BulkSaleView sale = api.one(id);
    return Templates.sale(
        sale,
        List.of(
            new Reading(Words.of("bulk.ours"), sale.ours()),
            new Reading(Words.of("bulk.theirs"), sale.theirs()),
            new Reading(Words.of("bulk.agreed"), sale.agreed())));
  }

  @Override
  public String path() {
    return "/bulk-sales";
  }

  @Override
  public String words() {
    return "bulk.title";
  }

  @Override
  public Part part() {
    return Part.SALES;
  }

  @Override
  public int order() {
    return 60;
  }
}
