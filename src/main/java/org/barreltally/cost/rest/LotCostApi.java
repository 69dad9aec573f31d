package org.barreltally.cost.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.barreltally.cost.LotCost;
import org.barreltally.cost.LotCosts;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What a lot cost. */
@Path("/api/lots/{lot}/cost")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({"owner", "bookkeeper"})
@Tag(name = "Costs")
public class LotCostApi {

  private final LotCosts lots;

  LotCostApi(LotCosts lots) {
    this.lots = lots;
  }

  @GET
  @Operation(
      summary = "What a lot and one of its jars cost, with the sums",
      description =
          "By specific lot, whatever the year's method. What a run lost (filter, overfill, breakage, shrink) is"
              + " borne by its good jars and its heel. A parent's own sheet explains its line.")
  public LotCost lot(@PathParam("lot") String lot) {
    return lots.of(lot);
  }
}
