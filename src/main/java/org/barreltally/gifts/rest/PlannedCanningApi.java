package org.barreltally.gifts.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.CanningPlans;
import org.barreltally.gifts.PlannedCanning;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What the owner means to can; shown before promising where somebody asks for it. */
@Path("/api/planned-canning")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class PlannedCanningApi {

  /** Plans to come, by day. */
  public record Plans(List<PlannedCanning> items) {}

  private final CanningPlans plans;
  private final Once once;

  PlannedCanningApi(CanningPlans plans, Once once) {
    this.plans = plans;
    this.once = once;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Say what is meant to be canned",
      description =
          "It can be counted in what-ifs of gift orders (planned=true). Nothing is ever promised"
              + " from it.")
  @APIResponse(
      responseCode = "201",
      description = "The plan",
      content = @Content(schema = @Schema(implementation = PlannedCanning.class)))
  public Response plan(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "half-pints",
                              value =
                                  "{\"on\": \"2026-12-02\", \"container\": \"HP\", \"grade\":"
                                      + " \"golden\", \"count\": 24}")))
          PlannedCanning said) {
    return once.answer(
        key, said, () -> Answer.created(URI.create("/api/planned-canning"), plans.plan(said)));
  }

  @GET
  @Operation(summary = "What is meant to be canned, from today on by day")
  public Plans list() {
    return new Plans(plans.toCome());
  }

  @DELETE
  @Path("/{id}")
  @Operation(summary = "Withdraw a plan: it no longer counts")
  @APIResponse(responseCode = "204", description = "Withdrawn")
  public void withdraw(@PathParam("id") UUID id) {
    plans.withdraw(id);
  }
}
