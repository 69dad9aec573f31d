package org.barreltally.shows.plan.rest;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.barreltally.shows.plan.PlanQuestion;
import org.barreltally.shows.plan.Planning;
import org.barreltally.shows.plan.ShowPlan;
import org.barreltally.web.MayBeEmpty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What to take to a show. */
@Path("/api/shows")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Shows")
public class PlanApi {

  private static final PlanQuestion NOTHING_SAID =
      new PlanQuestion(null, null, null, null, null, null, null, null, null, null);

  private final Planning planning;

  PlanApi(Planning planning) {
    this.planning = planning;
  }

  @POST
  @Path("/{id}/plan")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "What to take to a show, and why",
      description =
          "Stores and promises nothing, so it needs no Idempotency-Key. Demand comes from what sold"
              + " at this show and shows like it (a show that sold out tells only that at least so many"
              + " were wanted), the number from what one too few and one too many cost; then it is cut"
              + " to what can be promised, carried and shown. Every field may be left out; assumptions"
              + " says what was taken instead.")
  @APIResponse(
      responseCode = "200",
      description = "The plan",
      content =
          @Content(
              schema = @Schema(implementation = ShowPlan.class),
              examples = @ExampleObject(name = "one kind of jar", value = PlanExamples.ANSWER)))
  public ShowPlan plan(
      @PathParam("id") UUID id,
      @MayBeEmpty
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "a harvest fair", value = PlanExamples.QUESTION)))
          PlanQuestion asked) {
    return planning.plan(id, asked == null ? NOTHING_SAID : asked);
  }
}
