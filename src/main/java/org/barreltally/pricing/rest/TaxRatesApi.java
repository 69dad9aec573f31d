package org.barreltally.pricing.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.net.URI;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.NoTaxRateHolds;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.TaxRate;
import org.barreltally.pricing.Taxes;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
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

/** The owner's rates of tax. */
@Path("/api/tax-rates")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Prices")
public class TaxRatesApi {

  // The number is invented, so that nobody takes it for a rate in force.
  private static final String ENTERED =
      """
      {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "productClass": "gift", "place": "VT/Millbrook Hollow",
       "percent": 6.25, "from": "2026-01-01", "source": "An invented rate", "enteredAt": "2025-12-20T12:00:00Z"}
      """;

  /** A rate as it is entered. */
  public record Entry(
      ProductClass productClass, String place, BigDecimal percent, LocalDate from, String source) {}

  private final Taxes taxes;
  private final Days days;
  private final Once once;

  TaxRatesApi(Taxes taxes, Days days, Once once) {
    this.taxes = taxes;
    this.days = days;
    this.once = once;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed("owner")
  @Operation(
      summary = "Enter a rate of tax for a product class at a place from a day on",
      description =
          "Percent of the price without tax, all that is due there together. A town stands after its"
              + " region and a slash; without a rate of its own it has the region's. A later day ends"
              + " an earlier rate, 0 percent ends tax; of two from the same day the one entered"
              + " later counts. Past sales keep their tax. What is due, the tax office decides; the"
              + " number in the example is invented.")
  @APIResponse(
      responseCode = "201",
      description = "The rate",
      content =
          @Content(
              schema = @Schema(implementation = TaxRate.class),
              examples = @ExampleObject(name = "an invented rate", value = ENTERED)))
  public Response enter(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "an invented rate",
                              value =
                                  """
                                  {"productClass": "gift", "place": "VT/Millbrook Hollow", "percent": 6.25,
                                   "from": "2026-01-01", "source": "An invented rate"}
                                  """)))
          Entry said) {
    if (key != null) {
      return once.answer(key, said, () -> entered(said));
    }
    Answer answer = entered(said);
    return Response.created(answer.location()).entity(answer.body()).build();
  }

  private Answer entered(Entry said) {
    TaxRate rate =
        taxes.enter(said.productClass(), said.place(), said.percent(), said.from(), said.source());
    return Answer.created(URI.create("/api/tax-rates/" + rate.id()), rate);
  }

  @GET
  @Operation(summary = "Rates of tax in the order they were entered")
  @APIResponse(
      responseCode = "200",
      description = "Rates, and where the list goes on",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "an invented rate",
                      value = "{\"items\": [" + ENTERED + "]}")))
  public Page<TaxRate> list(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        taxes.list(page.after(UUID::fromString).orElse(null), page.limit() + 1),
        rate -> rate.id().toString());
  }

  @GET
  @Path("/holding")
  @Operation(summary = "The rate that holds for a product class at a place on a day")
  @APIResponse(
      responseCode = "200",
      description = "The rate of the place, else of its region",
      content =
          @Content(
              schema = @Schema(implementation = TaxRate.class),
              examples = @ExampleObject(name = "an invented rate", value = ENTERED)))
  public TaxRate holding(
      @QueryParam("productClass") String productClass,
      @QueryParam("place") String place,
      @QueryParam("on") String on) {
    ProductClass wanted =
        Asked.oneGiven(ProductClass.values(), ProductClass::code, productClass, "productClass");
    LocalDate day = on == null ? days.today() : days.known(Asked.day(on, "on"), "on");
    return taxes.rate(wanted, place, day).orElseThrow(() -> new NoTaxRateHolds(wanted, place, day));
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One rate of tax")
  @APIResponse(
      responseCode = "200",
      description = "The rate",
      content =
          @Content(
              schema = @Schema(implementation = TaxRate.class),
              examples = @ExampleObject(name = "an invented rate", value = ENTERED)))
  public TaxRate one(@PathParam("id") UUID id) {
    return taxes.at(id);
  }
}
