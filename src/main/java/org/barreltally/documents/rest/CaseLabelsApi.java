package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.LabelText;
import org.barreltally.documents.LotLabels;
import org.barreltally.documents.Papers;
import org.barreltally.documents.SheetRun;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The labels of cases of a lot's jars. */
@Path("/api/lots/{lot}/case-labels.pdf")
@Tag(name = "Papers")
public class CaseLabelsApi {

  private final LotLabels labels;

  CaseLabelsApi(LotLabels labels) {
    this.labels = labels;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the labels of cases of a lot's jars of one size",
      description =
          "Needed: container, and perCase, the jars in a case (1 to 1000). count is of cases; count, sheet,"
              + " startAt and gtin (of the case) as for the labels of jars. Refused for a lot that is held."
              + PdfAnswer.CAUTION)
  @APIResponse(
      responseCode = "200",
      description = "Sheets of labels",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "case labels", value = PdfAnswer.EXAMPLE)))
  public Response draw(
      @PathParam("lot") String lot,
      @QueryParam("container") String container,
      @QueryParam("count") String count,
      @QueryParam("sheet") String sheet,
      @QueryParam("startAt") String startAt,
      @QueryParam("perCase") String perCase,
      @QueryParam("gtin") String gtin) {
    LabelSheet on = labels.sheet(sheet);
    SheetRun run = SheetRun.of(on, Asked.whole(startAt, "startAt"), Asked.whole(count, "count"));
    LabelText text = labels.ofCase(lot, container, on, Asked.whole(perCase, "perCase"), gtin);
    return PdfAnswer.of(Papers.labels(text, run), "case-labels-" + lot);
  }
}
