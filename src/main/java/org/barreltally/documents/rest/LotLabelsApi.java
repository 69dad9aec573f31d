package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import org.barreltally.documents.JarLabel;
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

/** The labels of a lot's jars. */
@Path("/api/lots/{lot}/labels.pdf")
@Tag(name = "Papers")
public class LotLabelsApi {

  private final LotLabels labels;

  LotLabelsApi(LotLabels labels) {
    this.labels = labels;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the labels of a lot's jars of one size",
      description =
          "Needed: container. count (1 to 10000) is the rest of one sheet when left out; startAt is the"
              + " first label used on a part-used sheet, from 1 along each row; sheet is the owner's or"
              + " letter-2x5. The net contents are at least as high as reference/net_contents_type_height"
              + " asks for the panel: panelArea in square inches, a guess by the contents when left out,"
              + " never less than the label. Refused for a lot that is held. The QR code leads to the lot"
              + " under the public address, or says its code where that is too long for the label."
              + " gtin is the number that GS1 licensed to the owner: the Code 128 then says it and the lot"
              + " as GS1-128. Drawing records nothing; see label-prints."
              + PdfAnswer.CAUTION)
  @APIResponse(
      responseCode = "200",
      description = "Sheets of labels",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "labels", value = PdfAnswer.EXAMPLE)))
  public Response draw(
      @PathParam("lot") String lot,
      @QueryParam("container") String container,
      @QueryParam("count") String count,
      @QueryParam("sheet") String sheet,
      @QueryParam("startAt") String startAt,
      @QueryParam("panelArea") String panelArea,
      @QueryParam("gtin") String gtin,
      @QueryParam("award") String award) {
    LabelSheet on = labels.sheet(sheet);
    SheetRun run = SheetRun.of(on, Asked.whole(startAt, "startAt"), Asked.whole(count, "count"));
    LabelText text =
        labels.ofJar(
            lot,
            on,
            new JarLabel(
                container, Asked.decimal(panelArea, "panelArea"), gtin, Asked.yes(award, "award")));
    return PdfAnswer.of(Papers.labels(text, run), "labels-" + lot);
  }
}
