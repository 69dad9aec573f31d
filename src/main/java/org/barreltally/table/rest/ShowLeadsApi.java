package org.barreltally.table.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.table.Leads;
import org.barreltally.table.TellLead;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** A table tells of people who would like gift boxes. */
@Path("/api/shows/{id}/leads")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Show table")
public class ShowLeadsApi {

  private final Leads leads;

  ShowLeadsApi(Leads leads) {
    this.leads = leads;
  }

  /** What was noted; no name comes back. */
  public record Noted(UUID id) {}

  @POST
  @Operation(
      summary = "Note somebody who would like gift boxes",
      description =
          "The id is made by the device; told again, it changes nothing, so the device may forget the"
              + " name once it was answered.")
  @APIResponse(
      responseCode = "201",
      description = "Noted",
      content = @Content(schema = @Schema(implementation = Noted.class)))
  public Response tell(
      @PathParam("id") UUID id,
      @NotNull(message = "Send who would like what as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "two boxes",
                              value =
                                  """
                                  {"id": "01a0c101-2222-7000-8000-00000000001e",
                                   "at": "2026-10-03T14:05:00Z", "name": "Orla Quince",
                                   "phone": "555 0142", "wish": "Two Breakfast boxes"}
                                  """)))
          TellLead said) {
    return Response.status(201).entity(new Noted(leads.tell(id, said))).build();
  }
}
