package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.Papers;
import org.barreltally.documents.TallySheets;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The tally sheet of a show, on paper. */
@Path("/api/shows/{id}/tally-sheet.pdf")
@Tag(name = "Papers")
public class TallySheetApi {

  private final TallySheets sheets;

  TallySheetApi(TallySheets sheets) {
    this.sheets = sheets;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the tally sheet of a show",
      description =
          "For when no phone works. Its rows are those of the phone's screen, in the same order, with"
              + " prices and lots; room for strokes, deals, and what was broken, tasted, given or"
              + " carried to another table.")
  @APIResponse(
      responseCode = "200",
      description = "One page or more",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "tally sheet", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("id") UUID id) {
    return PdfAnswer.of(Papers.pages(sheets.of(id)), "tally-sheet-" + id);
  }
}
