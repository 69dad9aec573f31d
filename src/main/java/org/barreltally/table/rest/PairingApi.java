package org.barreltally.table.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.barreltally.table.Phones;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** A phone turns the owner's code into a token of its own; nobody is signed in for it. */
@Path("/api/table/pairing")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Show table")
public class PairingApi {

  private final Phones phones;

  PairingApi(Phones phones) {
    this.phones = phones;
  }

  /** The owner's code as it was scanned or typed. */
  public record Code(String code) {}

  @POST
  @Operation(
      summary = "Pair a phone with the owner's code",
      description =
          "Without signing in. The code works once; the token is shown here and never again.")
  @APIResponse(
      responseCode = "201",
      description = "The phone's own token",
      content = @Content(schema = @Schema(implementation = Phones.Paired.class)))
  public Response pair(
      @NotNull(message = "Send the code as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "a code",
                              value = "{\"code\": \"q7x2m-0rk9t-ahw4d-3v8pz\"}")))
          Code said) {
    return Response.status(201).entity(phones.pair(said.code())).build();
  }
}
