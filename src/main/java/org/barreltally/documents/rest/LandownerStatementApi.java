package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.LandownerStatements;
import org.barreltally.documents.Papers;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The statement of a landowner. */
@Path("/api/leases/{id}/statement.pdf")
@Tag(name = "Papers")
public class LandownerStatementApi {

  private final LandownerStatements statements;

  LandownerStatementApi(LandownerStatements statements) {
    this.statements = statements;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the statement of a landowner",
      description =
          "Each step of the sum: taps, rent, what was carried over, every jar handed over with its lot and"
              + " what it counts for, what is still owed, and the values of both sides.")
  @APIResponse(
      responseCode = "200",
      description = "One page or more",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "statement", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("id") UUID id, @QueryParam("season") String season) {
    return PdfAnswer.of(
        Papers.pages(statements.of(id, Asked.year(season, "season"))), "statement-" + id);
  }
}
