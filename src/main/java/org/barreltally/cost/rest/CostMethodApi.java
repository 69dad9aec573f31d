package org.barreltally.cost.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.barreltally.cost.CostMethod;
import org.barreltally.cost.CostMethods;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** By which method each year is valued. */
@Path("/api/cost-method")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Costs")
public class CostMethodApi {

  /** A year and its method. */
  public record Choose(Integer year, CostMethod method) {}

  /** The years that have a method of their own. */
  public record AllMethods(List<CostMethods.Chosen> items) {}

  private final CostMethods methods;
  private final Once once;

  CostMethodApi(CostMethods methods, Once once) {
    this.methods = methods;
    this.once = once;
  }

  @GET
  @RolesAllowed({"owner", "bookkeeper"})
  @Operation(
      summary = "The methods chosen, by year",
      description =
          "A year without one goes by the nearest before it, and where there is none by specific lot.")
  public AllMethods list() {
    return new AllMethods(methods.list());
  }

  @POST
  @RolesAllowed("owner")
  @Operation(
      summary = "Choose how a year's stock is valued",
      description =
          "By specific lot, moving average, or first in first out. A closed year keeps its method. Your tax"
              + " preparer decides which is for you and when it may change.")
  @APIResponse(
      responseCode = "201",
      description = "Chosen",
      content = @Content(schema = @Schema(implementation = CostMethods.Chosen.class)))
  public Response choose(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "moving average",
                              value = "{\"year\": 2026, \"method\": \"moving-average\"}")))
          Choose said) {
    return once.answer(
        key,
        said,
        () ->
            Answer.created(
                URI.create("/api/cost-method"), methods.choose(said.year(), said.method())));
  }
}
