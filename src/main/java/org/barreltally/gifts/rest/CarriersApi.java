package org.barreltally.gifts.rest;

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
import java.time.LocalDate;
import java.util.List;
import org.barreltally.gifts.Address;
import org.barreltally.gifts.CarrierTable;
import org.barreltally.gifts.Carriers;
import org.barreltally.gifts.LatestSend;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The carriers' zones and days, as the owner reads them from the carrier's own tables. */
@Path("/api/carriers")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class CarriersApi {

  private static final String TABLE =
      """
      {"name": "Parcel post", "validFrom": "2026-11-01",
       "weekdays": ["mon", "tue", "wed", "thu", "fri", "sat"],
       "closed": ["2026-11-26", "2026-12-25"],
       "zones": [
         {"name": "near", "days": 2, "countries": ["US"], "postcodes": ["05", "03"]},
         {"name": "far", "days": 5, "countries": ["US"]},
         {"name": "islands", "days": 9, "countries": ["US"], "regions": ["HI", "AK"]}]}
      """;

  /** The tables that hold. */
  public record Tables(List<CarrierTable> items) {}

  private final Carriers carriers;
  private final Once once;

  CarriersApi(Carriers carriers, Once once) {
    this.carriers = carriers;
    this.once = once;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Tell a carrier's zones and days, from a day on",
      description =
          "An address belongs to the zone that describes it most closely: by how its postcode"
              + " begins, else by state, else by country. days are carrying days on the way. Read"
              + " them from the carrier's own table; a later table of the same name takes the place"
              + " of this one from its day.")
  @APIResponse(
      responseCode = "201",
      description = "The table",
      content = @Content(schema = @Schema(implementation = CarrierTable.class)))
  public Response tell(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(content = @Content(examples = @ExampleObject(name = "zones", value = TABLE)))
          CarrierTable said) {
    return once.answer(
        key, said, () -> Answer.created(URI.create("/api/carriers"), carriers.tell(said)));
  }

  @GET
  @Operation(summary = "The carriers' tables that hold on a day, today if none is given")
  public Tables list(@QueryParam("on") String on) {
    return new Tables(carriers.holding(Asked.day(on, "on")));
  }

  @GET
  @Path("/latest-send")
  @Operation(summary = "The latest day to send a parcel, worked back from the day it is wanted")
  public LatestSend latest(
      @QueryParam("carrier") String carrier,
      @QueryParam("wantedBy") String wantedBy,
      @QueryParam("country") String country,
      @QueryParam("region") String region,
      @QueryParam("postcode") String postcode) {
    LocalDate day = Asked.day(wantedBy, "wantedBy");
    if (day == null || country == null) {
      throw new InvalidField(
          day == null ? "wantedBy" : "country", "Give wantedBy and country; both are needed.");
    }
    return carriers.latestSend(
        carrier, day, new Address(List.of(), null, region, postcode, country));
  }
}
