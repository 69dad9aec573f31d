package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.BoilLogs;
import org.barreltally.documents.Papers;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Boil logs. */
@Path("/api/boils/{id}/log.pdf")
@Tag(name = "Papers")
public class BoilLogApi {

  private final BoilLogs logs;

  BoilLogApi(BoilLogs logs) {
    this.logs = logs;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the log of a boil",
      description =
          "What went into the pan, every draw-off with its barrel, syrup expected by sugar and by the trade's"
              + " rules beside what was drawn, notes, and cautions about hot syrup and the filter press."
              + " What was taken back stands with its reason.")
  @APIResponse(
      responseCode = "200",
      description = "One page or more",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "boil log", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("id") UUID id) {
    return PdfAnswer.of(Papers.pages(logs.of(id)), "boil-log-" + id);
  }
}
