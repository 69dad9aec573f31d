package org.barreltally.sugarbush.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.barreltally.sugarbush.Landowner;
import org.barreltally.sugarbush.Landowners;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Landowners, as their leases name them. */
@Path("/api/landowners")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Leases")
public class LandownersApi {

  private final Landowners landowners;

  LandownersApi(Landowners landowners) {
    this.landowners = landowners;
  }

  /** How a landowner is to be named, and where to write to. */
  public record Named(String name, String address) {}

  @GET
  @Operation(summary = "Landowners by name")
  @APIResponse(
      responseCode = "200",
      description = "A part of the list",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one landowner",
                      value = "{\"items\": [" + LeaseExamples.LANDOWNER + "]}")))
  public Page<Landowner> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        landowners.list(page.after(name -> name).orElse(null), page.limit() + 1), Landowner::name);
  }

  @PUT
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Change how a landowner is named and where to write to",
      description = "Leases go by the record, not by the name, so a person's data can be removed.")
  @APIResponse(
      responseCode = "200",
      description = "The landowner",
      content =
          @Content(
              schema = @Schema(implementation = Landowner.class),
              examples = @ExampleObject(name = "example", value = LeaseExamples.LANDOWNER)))
  public Landowner change(
      @PathParam("id") UUID id,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "example", value = LeaseExamples.NAMED)))
          Named said) {
    return landowners.change(id, said.name(), said.address());
  }
}
