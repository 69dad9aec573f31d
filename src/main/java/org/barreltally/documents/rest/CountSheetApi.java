package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import org.barreltally.documents.CountSheets;
import org.barreltally.documents.Papers;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Count sheets without figures. */
@Path("/api/stock/count-sheet.pdf")
@Tag(name = "Papers")
public class CountSheetApi {

  private final CountSheets sheets;

  CountSheetApi(CountSheets sheets) {
    this.sheets = sheets;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the blind count sheet of a place",
      description =
          "Its lots by size and grade, empty lines for what else turns up, room for two counters and their"
              + " signatures; no figure of the book.")
  @APIResponse(
      responseCode = "200",
      description = "One page or more",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "count sheet", value = PdfAnswer.EXAMPLE)))
  public Response draw(
      @Parameter(description = "The code of an own place", example = "cool-room")
          @QueryParam("place")
          String place) {
    return PdfAnswer.of(Papers.pages(sheets.of(place)), "count-sheet-" + place);
  }
}
