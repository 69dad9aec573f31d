package org.barreltally.table.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.barreltally.table.Pairing;
import org.barreltally.table.Phone;
import org.barreltally.table.Phones;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The phones of show tables, for the owner. */
@Path("/api/phones")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed("owner")
@Tag(name = "Show table")
public class PhonesApi {

  private final Phones phones;

  PhonesApi(Phones phones) {
    this.phones = phones;
  }

  /** A phone to be paired, by the name it is to have. */
  public record NewPhone(String name) {}

  /** All phones. */
  public record PhoneList(List<Phone> items) {}

  @GET
  @Operation(summary = "The phones that were paired, the newest first")
  public PhoneList list() {
    return new PhoneList(phones.list());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Make a code that pairs one phone",
      description = "Shown here and never again; it works once, within fifteen minutes.")
  @APIResponse(
      responseCode = "201",
      description = "The code",
      content = @Content(schema = @Schema(implementation = Pairing.class)))
  public Response open(
      @NotNull(message = "Send the phone's name as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "a phone", value = "{\"name\": \"Blue phone\"}")))
          NewPhone said) {
    return Response.status(201).entity(phones.open(said.name())).build();
  }

  @DELETE
  @Path("/{id}")
  @Operation(summary = "Cut a phone off: its token ends at once")
  public Phone cutOff(@PathParam("id") UUID id) {
    return phones.cutOff(id);
  }
}
