package org.barreltally.barrels.rest;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.barreltally.barrels.Purchases;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Syrup bought from others, barrel by barrel. */
@Path("/api/purchases")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Barrels")
public class PurchasesApi {

  private final Purchases purchases;
  private final FarmSettings settings;
  private final Once once;

  PurchasesApi(Purchases purchases, FarmSettings settings, Once once) {
    this.purchases = purchases;
    this.settings = settings;
    this.once = once;
  }

  /** A purchase just recorded; who sold it is told by the list alone. */
  public record Recorded(UUID id, UUID supplier, BarrelView barrel) {}

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record a bought barrel with its supplier",
      description =
          "As a filled barrel, with on in place of filledOn. A name known is not doubled.")
  @APIResponse(
      responseCode = "201",
      description = "The purchase and the barrel",
      content = @Content(schema = @Schema(implementation = Recorded.class)))
  public Response buy(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "a neighbour's barrel",
                              value =
                                  """
                                  {"supplier": {"name": "Fennimore Ash"}, "on": "2026-05-02",
                                   "tag": "X-11", "season": 2026, "material": "stainless",
                                   "weighing": {"gross": {"value": 470.0, "unit": "lb"},
                                                "tare": {"value": 43.0, "unit": "lb"}},
                                   "density": {"reading": {"value": 67.0, "unit": "Brix"},
                                               "temperature": {"value": 68, "unit": "degF"},
                                               "instrument": "refractometer"},
                                   "transmittance": 55, "taste": "clean"}
                                  """)))
          BarrelRequests.Purchase said) {
    return once.answer(
        key,
        said,
        () -> {
          Purchases.Recorded recorded =
              purchases.record(said.asFilling(), said.supplier().name(), said.supplier().details());
          return Answer.created(
              URI.create("/api/barrels/" + recorded.barrel().tag()),
              new Recorded(
                  recorded.purchase(),
                  recorded.supplier(),
                  BarrelView.of(recorded.barrel(), settings)));
        });
  }

  @GET
  @Operation(summary = "Purchases with their suppliers, in the order they were recorded")
  @APIResponse(
      responseCode = "200",
      description = "Purchases, and where the list goes on",
      content =
          @Content(
              examples = @ExampleObject(name = "one barrel", value = BarrelExamples.PURCHASES)))
  public Page<Purchases.Bought> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        purchases.list(page.after(UUID::fromString).orElse(null), page.limit() + 1),
        bought -> bought.id().toString());
  }
}
