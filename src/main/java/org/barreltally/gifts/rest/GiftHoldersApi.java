package org.barreltally.gifts.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.barreltally.gifts.GiftHolders;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Who holds jars of a lot from gift orders. */
@Path("/api/lots/{lot}/gift-recipients")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class GiftHoldersApi {

  /** The recipients, by order and number. */
  public record Holders(List<GiftHolders.Holder> items) {}

  private final GiftHolders holders;

  GiftHoldersApi(GiftHolders holders) {
    this.holders = holders;
  }

  @GET
  @Operation(
      summary = "Which recipients of gift orders hold jars of a lot",
      description = "On the gift shelf, sent, or back and not inspected yet.")
  @APIResponse(
      responseCode = "200",
      description = "The recipients",
      content =
          @Content(
              schema = @Schema(implementation = Holders.class),
              examples =
                  @ExampleObject(
                      name = "one recipient",
                      value =
                          """
                          {"items": [{"order": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "n": 3,
                            "name": "Aunt Ottilie Quillfeather", "buyer": "Hesper Loomworks",
                            "container": "HP", "count": 1, "at": "sent"}]}
                          """)))
  public Holders of(@PathParam("lot") String lot) {
    return new Holders(holders.of(lot));
  }
}
