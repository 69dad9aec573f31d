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
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
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
  @APIResponse(
      responseCode = "200",
      description = "The sale, here without ours and theirs",
      content =
          @Content(
              schema = @Schema(implementation = BulkSaleView.class),
              examples =
                  @ExampleObject(
                      name = "graded darker",
                      value =
                          """
                          {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "on": "2026-05-12", "tag": "B-01",
                           "lot": "S26-001", "takenBack": false,
                           "buyer": {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3e", "name": "Thistledown Packers"},
                           "agreed": {"weight": {"value": 443.0, "unit": "lb"}, "grade": "dark",
                                      "pricePerLb": {"amount": 2.20, "currency": "USD"},
                                      "amount": {"amount": 974.60, "currency": "USD"}},
                           "amount": {"amount": 974.60, "currency": "USD"},
                           "variance": {"total": {"amount": -69.98, "currency": "USD"},
                                        "byWeight": {"amount": -3.53, "currency": "USD"},
                                        "byGrade": {"amount": -66.45, "currency": "USD"}}}
                          """)))
  public BulkSaleView one(@PathParam("id") UUID id) {
    return BulkSaleView.of(selling.at(id));
  }
}
