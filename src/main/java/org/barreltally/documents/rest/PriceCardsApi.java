package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.Papers;
import org.barreltally.documents.PriceCardText;
import org.barreltally.documents.PriceCards;
import org.barreltally.documents.SheetRun;
import org.barreltally.measure.ColorClass;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Price cards for a table. */
@Path("/api/price-lists/{id}/cards.pdf")
@Tag(name = "Papers")
public class PriceCardsApi {

  private final PriceCards cards;

  PriceCardsApi(PriceCards cards) {
    this.cards = cards;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw price cards for a table",
      description =
          "One card for each line of the list, or those of a container; with grade, a card for each size as"
              + " it is priced in that grade. sheet is a label sheet, when left out six large cards on"
              + " letter or eight on A4 by the owner's units; startAt is the first place used, from 1."
              + " ribbon puts an award over every card; without it cards show what is known of awards.")
  @APIResponse(
      responseCode = "200",
      description = "Sheets of cards",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "cards", value = PdfAnswer.EXAMPLE)))
  public Response draw(
      @PathParam("id") UUID id,
      @QueryParam("sheet") String sheet,
      @QueryParam("startAt") String startAt,
      @QueryParam("container") String container,
      @QueryParam("grade") String grade,
      @QueryParam("ribbon") String ribbon) {
    LabelSheet on = cards.sheet(sheet);
    ColorClass only = grade == null ? null : ColorClass.of(grade);
    List<PriceCardText> texts = cards.of(id, new PriceCards.Wanted(container, only, ribbon));
    SheetRun run = SheetRun.of(on, Asked.whole(startAt, "startAt"), texts.size());
    return PdfAnswer.of(Papers.priceCards(texts, on, run.startAt()), "price-cards-" + id);
  }
}
