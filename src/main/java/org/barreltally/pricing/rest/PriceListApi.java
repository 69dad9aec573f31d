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
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;
import org.barreltally.pricing.Quotes;
import org.barreltally.pricing.Standing;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.IfMatch;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** One price list: read, withdrawn, asked what a basket costs. */
@Path("/api/price-lists/{id}")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Prices")
public class PriceListApi {

  /** Why a list is withdrawn. */
  public record Withdrawal(String reason) {}

  private final PriceLists lists;
  private final Quotes quotes;
  private final FarmSettings settings;

  PriceListApi(PriceLists lists, Quotes quotes, FarmSettings settings) {
    this.lists = lists;
    this.quotes = quotes;
    this.settings = settings;
  }

  @GET
  @Operation(
      summary = "One price list",
      description = "The ETag changes when it is replaced or withdrawn; it goes into If-Match.")
  @APIResponse(
      responseCode = "200",
      description = "The list",
      content =
          @Content(
              schema = @Schema(implementation = PriceListView.class),
              examples = @ExampleObject(name = "fair prices", value = PriceListExamples.LIST)))
  public Response one(@PathParam("id") UUID id) {
    return answer(lists.at(id));
  }

  @POST
  @Path("/withdrawal")
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed("owner")
  @Operation(
      summary = "Withdraw a price list from today on",
      description =
          "For a list entered by mistake. It stays readable and past sales keep their prices; an"
              + " earlier version, if there is one, holds again.")
  @APIResponse(
      responseCode = "200",
      description = "The list, withdrawn",
      content = @Content(schema = @Schema(implementation = PriceListView.class)))
  public Response withdraw(
      @PathParam("id") UUID id,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "mistyped",
                              value = "{\"reason\": \"Quarts were mistyped\"}")))
          Withdrawal said) {
    return answer(lists.withdraw(id, said.reason(), IfMatch.versions(ifMatch)));
  }

  @POST
  @Path("/quote")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Say what a basket would cost; nothing is stored",
      description =
          "With deal, the buyer pays the least that the list allows, deals taking the dearest jars"
              + " first; each line bears its share of the deals. Tax by place and day, rounded half up"
              + " once a line; without a place, or where no rate was entered, it is 0. What tax is due,"
              + " your tax preparer decides.")
  @APIResponse(
      responseCode = "200",
      description = "What it costs",
      content = @Content(schema = @Schema(implementation = QuoteView.class)))
  public QuoteView quote(
      @PathParam("id") UUID id,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "three half-pints and a quart",
                              value = PriceListExamples.BASKET)))
          AskQuote said) {
    return QuoteView.of(
        quotes.of(
            lists.at(id),
            said.basket(),
            Boolean.TRUE.equals(said.deal()),
            said.place(),
            said.on()));
  }

  private Response answer(PriceList list) {
    Standing standing = lists.standing(list.id());
    return Response.ok(PriceListView.of(list, standing, settings.now().said().currency()))
        .tag(new EntityTag(standing.state()))
        .build();
  }
}
