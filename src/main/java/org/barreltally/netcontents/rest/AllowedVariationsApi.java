package org.barreltally.netcontents.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.netcontents.AllowedVariation;
import org.barreltally.netcontents.AllowedVariations;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The owner's table of allowed variations for the US manner. */
@Path("/api/net-contents/allowed-variations")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Net contents")
public class AllowedVariationsApi {

  // The number is invented, so that nobody takes it for the handbook's.
  private static final String ENTERED =
      """
      {"id": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "container": "PT",
       "allowed": {"value": 9.9, "unit": "mL"}, "source": "Handbook table as read by the owner",
       "enteredAt": "2026-06-01T12:00:00Z"}
      """;

  /** What is entered: for a container, or for contents over one volume up to another. */
  public record Entry(
      String container, Quantity over, Quantity upTo, Quantity allowed, String source) {}

  private final AllowedVariations variations;

  AllowedVariationsApi(AllowedVariations variations) {
    this.variations = variations;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed("owner")
  @Operation(
      summary = "Enter how much one jar may be short, as read in the handbook",
      description =
          "For a container, or for nominal contents over one volume up to and with another. A newer"
              + " entry counts instead of an older one; one for a container before one for a range."
              + " Read the value in the table of NIST Handbook 133 in force; the number in the"
              + " example is invented.")
  @APIResponse(
      responseCode = "201",
      description = "The allowed variation",
      content =
          @Content(
              schema = @Schema(implementation = AllowedVariation.class),
              examples = @ExampleObject(name = "an invented number", value = ENTERED)))
  public Response enter(
      @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "an invented number",
                              value =
                                  """
                                  {"container": "PT", "allowed": {"value": 9.9, "unit": "mL"},
                                   "source": "Handbook table as read by the owner"}
                                  """)))
          Entry entry) {
    if (entry == null) {
      throw new InvalidField("allowed", "Send container or range, allowed and source as JSON.");
    }
    AllowedVariation entered =
        variations.enter(
            entry.container(), entry.over(), entry.upTo(), entry.allowed(), entry.source());
    return Response.created(URI.create("/api/net-contents/allowed-variations/" + entered.id()))
        .entity(entered)
        .build();
  }

  @GET
  @Operation(summary = "Allowed variations that were entered, oldest first")
  @APIResponse(
      responseCode = "200",
      description = "A part of the list",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "an invented number",
                      value = "{\"items\": [" + ENTERED + "]}")))
  public Page<AllowedVariation> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        variations.list(page.after(UUID::fromString).orElse(null), page.limit() + 1),
        entered -> entered.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One allowed variation")
  @APIResponse(
      responseCode = "200",
      description = "The allowed variation",
      content =
          @Content(
              schema = @Schema(implementation = AllowedVariation.class),
              examples = @ExampleObject(name = "an invented number", value = ENTERED)))
  public AllowedVariation one(@PathParam("id") UUID id) {
    return variations.at(id);
  }
}
