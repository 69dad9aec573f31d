package org.barreltally.bulk.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.barreltally.bulk.BulkSelling;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Barrels that were sold whole. */
@Path("/api/bulk-sales")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Bulk sales")
public class BulkSalesApi {

  private final BulkSelling selling;

  BulkSalesApi(BulkSelling selling) {
    this.selling = selling;
  }

  @GET
  @Operation(summary = "Bulk sales with their buyers, in the order they were recorded")
  public Page<BulkSaleView> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        selling.list(page.after(UUID::fromString).orElse(null), page.limit() + 1).stream()
            .map(BulkSaleView::of)
            .toList(),
        view -> view.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One bulk sale with its buyer")
  public BulkSaleView one(@PathParam("id") UUID id) {
    return BulkSaleView.of(selling.at(id));
  }
}
