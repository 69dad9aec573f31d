package org.barreltally.netcontents.rest;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.barreltally.netcontents.Checking;
import org.barreltally.netcontents.NetContentsCheck;
import org.barreltally.netcontents.NetContentsOrder;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Weighed jars of a run, judged. */
@Path("/api/canning/runs/{lot}/net-contents-check")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Net contents")
public class CheckNetContentsApi {

  private final Checking checking;

  CheckNetContentsApi(Checking checking) {
    this.checking = checking;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Check the net contents of a packed lot; the check is kept with it",
      description =
          "Net weights in grams as a scale reads in air, without the jar. In the US manner the"
              + " sample follows from the size of the lot; in the European manner it is 20, 30 or"
              + " 50. A failed check suggests a hold and does not hold by itself. The"
              + " weights-and-measures office decides.")
  @APIResponse(
      responseCode = "201",
      description = "The check as it is kept",
      content =
          @Content(
              schema = @Schema(implementation = NetContentsCheck.class),
              examples = @ExampleObject(name = "twelve pints", value = CheckExamples.ANSWERED)))
  public Response check(
      @PathParam("lot") String lot,
      @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "twelve pints", value = CheckExamples.ASKED)))
          NetContentsOrder order) {
    NetContentsCheck check = checking.check(lot, order);
    return Response.created(
            URI.create("/api/canning/runs/" + check.lot() + "/net-contents-checks/" + check.id()))
        .entity(check)
        .build();
  }
}
