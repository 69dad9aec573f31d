package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.Paper;
import org.barreltally.documents.Papers;
import org.barreltally.documents.PriceSheets;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** A price list to hand out. */
@Path("/api/price-lists/{id}/sheet.pdf")
@Tag(name = "Papers")
public class PriceSheetApi {

  private final PriceSheets sheets;

  PriceSheetApi(PriceSheets sheets) {
    this.sheets = sheets;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw a price list to hand out",
      description =
          "Grouped by grade, with its deals, since when it is valid, and the maker; readable at arm's"
              + " length: type of 16 points or more on one page, of 13 or more on two. paper is letter or"
              + " a4, by the owner's units when left out. A list that was replaced or withdrawn says so.")
  @APIResponse(
      responseCode = "200",
      description = "The list, one or two pages unless it is very long",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "price list", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("id") UUID id, @QueryParam("paper") String paper) {
    return PdfAnswer.of(
        Papers.priceSheet(
            sheets.of(id), sheets.paper(Asked.oneOf(Paper.values(), Paper::code, paper, "paper"))),
        "price-list-" + id);
  }
}
