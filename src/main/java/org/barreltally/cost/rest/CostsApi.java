package org.barreltally.cost.rest;

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
import java.net.URI;
import java.util.UUID;
import org.barreltally.cost.Cost;
import org.barreltally.cost.Costs;
import org.barreltally.cost.EnterCost;
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

/** What was spent, and what it belongs to. */
@Path("/api/costs")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Costs")
public class CostsApi {

  private static final String BODY = "Send the record as JSON.";

  /** Why a cost is taken back. */
  public record Because(String reason) {}

  private final Costs costs;
  private final Once once;

  CostsApi(Costs costs, Once once) {
    this.costs = costs;
    this.once = once;
  }

  @GET
  @RolesAllowed({"owner", "bookkeeper"})
  @Operation(
      summary = "What was spent, in the order it was entered",
      description = "year is the year it is booked in; leave it out for all.")
  public Page<Cost> list(
      @QueryParam("year") String year,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        costs.list(
            Asked.year(year, "year"), page.after(UUID::fromString).orElse(null), page.limit() + 1),
        cost -> cost.id().toString());
  }

  @GET
  @Path("/{id}")
  @RolesAllowed({"owner", "bookkeeper"})
  @Operation(summary = "One cost")
  public Cost one(@PathParam("id") UUID id) {
    return costs.at(id);
  }

  @POST
  @RolesAllowed("owner")
  @Operation(
      summary = "Enter what was spent",
      description =
          "Say what it belongs to, one of: season (shared by mass over the syrup boiled in it), lot (bought,"
              + " or of opening stock), run (by piece over its good jars), container or supply (a price from the"
              + " day on, of one or of so many: per), show. Give the amount, or hours and rate. Of a closed year"
              + " it is booked in the open one, marked late, and borne by that. Your tax preparer decides what"
              + " counts as a cost.")
  @APIResponse(
      responseCode = "201",
      description = "Entered",
      content = @Content(schema = @Schema(implementation = Cost.class)))
  public Response enter(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = {
                        @ExampleObject(
                            name = "fuel of a season",
                            value =
                                """
                                {"on": "2026-04-20", "kind": "fuel", "season": 2026,
                                 "amount": {"amount": 812.40, "currency": "USD"}, "note": "Eleven cords"}
                                """),
                        @ExampleObject(
                            name = "hours at the canner",
                            value =
                                """
                                {"on": "2026-06-20", "kind": "labour", "run": "P260620-1", "hours": 6.5,
                                 "rate": {"amount": 18.00, "currency": "USD"}}
                                """),
                        @ExampleObject(
                            name = "labels by the thousand",
                            value =
                                """
                                {"on": "2026-05-04", "kind": "label", "container": "PT", "per": 1000,
                                 "amount": {"amount": 64.00, "currency": "USD"}}
                                """)
                      }))
          EnterCost said) {
    return once.answer(
        key,
        said,
        () -> {
          Cost cost = costs.enter(said);
          return Answer.created(URI.create("/api/costs/" + cost.id()), cost);
        });
  }

  @POST
  @Path("/{id}/reversal")
  @RolesAllowed("owner")
  @Operation(
      summary = "Take a cost back",
      description =
          "It stays in the list with the reason. What a closed year reckoned with it stays; the open year"
              + " bears the difference.")
  @APIResponse(
      responseCode = "201",
      description = "The cost, taken back",
      content = @Content(schema = @Schema(implementation = Cost.class)))
  public Response reverse(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "a slip of the pen",
                              value = "{\"reason\": \"The bill was for another farm\"}")))
          Because said) {
    return once.answer(
        key,
        said,
        () -> Answer.created(URI.create("/api/costs/" + id), costs.reverse(id, said.reason())));
  }
}
