package org.barreltally.watch.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.time.Instant;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.watch.StoreroomTemperature;
import org.barreltally.watch.Storerooms;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Temperatures of storerooms. */
@Path("/api/storerooms/{place}/temperatures")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Watch")
public class StoreroomsApi {

  private final Storerooms storerooms;

  StoreroomsApi(Storerooms storerooms) {
    this.storerooms = storerooms;
  }

  /** What the thermometer said. */
  public record Reading(Instant at, Quantity temperature) {}

  @GET
  @Operation(summary = "A storeroom's temperatures, the newest entered first")
  public Page<StoreroomTemperature> list(
      @PathParam("place") String place,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        storerooms.list(place, page.after(UUID::fromString).orElse(null), page.limit() + 1),
        noted -> noted.id().toString());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Note the temperature of a storeroom")
  @APIResponse(
      responseCode = "201",
      description = "Noted",
      content = @Content(schema = @Schema(implementation = StoreroomTemperature.class)))
  public Response note(
      @PathParam("place") String place,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "a warm afternoon",
                              value =
                                  """
                                  {"at": "2026-07-14T19:30:00Z",
                                   "temperature": {"value": 83, "unit": "degF"}}
                                  """)))
          Reading said) {
    StoreroomTemperature noted = storerooms.note(place, said.at(), said.temperature());
    return Response.created(
            UriBuilder.fromPath("/api/storerooms/{place}/temperatures").build(place))
        .entity(noted)
        .build();
  }
}
