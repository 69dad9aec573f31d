package org.barreltally.pricing.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.NoPriceListHolds;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The price list that holds. */
@Path("/api/price-lists/current")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Prices")
public class CurrentPriceListApi {

  private final PriceLists lists;
  private final FarmSettings settings;
  private final Days days;

  CurrentPriceListApi(PriceLists lists, FarmSettings settings, Days days) {
    this.lists = lists;
    this.settings = settings;
    this.days = days;
  }

  @GET
  @Operation(
      summary = "The price list that holds for an audience on a day",
      description =
          "Today where no day is given. Of several the one valid from the latest day, then the one"
              + " entered last; a new version holds from its first day on.")
  @APIResponse(
      responseCode = "200",
      description = "The list",
      content =
          @Content(
              schema = @Schema(implementation = PriceListView.class),
              examples = @ExampleObject(name = "fair prices", value = PriceListExamples.LIST)))
  public PriceListView current(
      @QueryParam("audience") String audience, @QueryParam("on") String on) {
    Audience wanted = Asked.oneGiven(Audience.values(), Audience::code, audience, "audience");
    LocalDate day = on == null ? days.today() : days.known(Asked.day(on, "on"), "on");
    return lists
        .current(wanted, day)
        .map(this::view)
        .orElseThrow(() -> new NoPriceListHolds(wanted, day));
  }

  private PriceListView view(PriceList list) {
    return PriceListView.of(list, lists.standing(list.id()), settings.now().said().currency());
  }
}
