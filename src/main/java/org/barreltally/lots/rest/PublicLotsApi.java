package org.barreltally.lots.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.barreltally.lots.PublicLots;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Which lots have a page that anybody may open who scans a jar. */
@Path("/api/public-lots")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Lots")
public class PublicLotsApi {

  private final PublicLots lots;

  PublicLotsApi(PublicLots lots) {
    this.lots = lots;
  }

  /** The codes of those lots. */
  public record PublicLotList(List<String> items) {}

  /** A lot, and whether its page is public. */
  public record PublicLot(String lot, boolean isPublic) {}

  @GET
  @Operation(summary = "The lots whose page anybody may open, by code")
  public PublicLotList list() {
    return new PublicLotList(List.copyOf(lots.all()));
  }

  @PUT
  @Path("/{lot}")
  @RolesAllowed("owner")
  @Operation(
      summary = "Make a lot's page public",
      description =
          "It tells grade, season, days and awards, at /jar/{lot}; a held lot shows nothing meanwhile.")
  public PublicLot show(@PathParam("lot") String lot) {
    lots.show(lot);
    return new PublicLot(lot, true);
  }

  @DELETE
  @Path("/{lot}")
  @RolesAllowed("owner")
  @Operation(summary = "Take a lot's page away again")
  public PublicLot hide(@PathParam("lot") String lot) {
    lots.hide(lot);
    return new PublicLot(lot, false);
  }
}
