package org.barreltally.bulk.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.barreltally.bulk.BulkSale;
import org.barreltally.bulk.BulkSelling;
import org.barreltally.bulk.SellBulk;
import org.barreltally.web.Answer;
import org.barreltally.web.IfMatch;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Sells a barrel whole. */
@Path("/api/barrels/{tag}/bulk-sale")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Bulk sales")
public class SellBulkApi {

  private static final String SOLD =
      """
      {"on": "2026-05-12", "buyer": {"name": "Thistledown Packers", "details": "Gate 3"},
       "ours": {"weight": {"value": 444.5, "unit": "lb"}, "grade": "amber"},
       "theirs": {"weight": {"value": 442.0, "unit": "lb"}, "grade": "dark"},
       "agreed": {"weight": {"value": 443.0, "unit": "lb"}, "grade": "dark"},
       "prices": {"amber": {"amount": 2.35, "currency": "USD"},
                  "dark": {"amount": 2.20, "currency": "USD"}}}
      """;

  private final BulkSelling selling;
  private final Once once;

  SellBulkApi(BulkSelling selling, Once once) {
    this.selling = selling;
    this.once = once;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Sell a barrel whole, paid on the agreed figures",
      description =
          "Every grade named needs a price per lb: in prices, or pricePerLb for the agreed grade. The"
              + " variance is the agreed amount minus ours: by weight at our grade's price, by grade"
              + " at the agreed weight. The buyer's name is not in the answer; read it at Location.")
  @APIResponse(
      responseCode = "201",
      description = "The sale",
      content = @Content(schema = @Schema(implementation = BulkSale.class)))
  public Response sell(
      @PathParam("tag") String tag,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content = @Content(examples = @ExampleObject(name = "graded darker", value = SOLD)))
          SellBulk said) {
    return once.answer(
        key,
        said,
        () -> {
          BulkSale sale = selling.sell(tag, IfMatch.versions(ifMatch), said);
          return Answer.created(URI.create("/api/bulk-sales/" + sale.id()), sale);
        });
  }
}
