package org.barreltally.pricing.rest;

import jakarta.annotation.security.RolesAllowed;
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
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.EnterPriceList;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceListSummary;
import org.barreltally.pricing.PriceLists;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
import org.barreltally.web.IfMatch;
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

/** The price lists. */
@Path("/api/price-lists")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Prices")
public class PriceListsApi {

  private final PriceLists lists;
  private final FarmSettings settings;
  private final Once once;

  PriceListsApi(PriceLists lists, FarmSettings settings, Once once) {
    this.lists = lists;
    this.settings = settings;
    this.once = once;
  }

  @GET
  @Operation(summary = "Price lists in the order they were entered, of one audience or all")
  public Page<PriceListSummary> list(
      @QueryParam("audience") String audience,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    Audience wanted = Asked.oneOf(Audience.values(), Audience::code, audience, "audience");
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        lists.list(wanted, page.after(UUID::fromString).orElse(null), page.limit() + 1),
        summary -> summary.id().toString());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed("owner")
  @Operation(
      summary = "Enter a price list, or a new version of one",
      description =
          "A list never changes, so that past sales keep their prices: a new version is a new list that"
              + " replaces the newest of its family and holds from its first day on. A line with a"
              + " grade comes before one without. A deal without a grade takes jars of any grade"
              + " mixed. Look at the warnings of the answer. With an Idempotency-Key, a repeat is"
              + " entered once; If-Match is about the replaced list.")
  @APIResponse(
      responseCode = "201",
      description = "The list",
      content =
          @Content(
              schema = @Schema(implementation = PriceListView.class),
              examples = @ExampleObject(name = "fair prices", value = PriceListExamples.LIST)))
  public Response enter(
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "fair prices", value = PriceListExamples.SAID)))
          EnterPriceList said) {
    if (key != null) {
      return once.answer(key, said, () -> entered(said, ifMatch));
    }
    Answer answer = entered(said, ifMatch);
    return Response.created(answer.location()).entity(answer.body()).build();
  }

  private Answer entered(EnterPriceList said, String ifMatch) {
    PriceList list = lists.enter(said, IfMatch.versions(ifMatch));
    return Answer.created(URI.create("/api/price-lists/" + list.id()), view(list));
  }

  private PriceListView view(PriceList list) {
    return PriceListView.of(list, lists.standing(list.id()), settings.now().said().currency());
  }
}
