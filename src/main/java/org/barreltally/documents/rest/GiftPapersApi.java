package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.barreltally.documents.AddressText;
import org.barreltally.documents.CardText;
import org.barreltally.documents.GiftPapers;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.NothingToPrint;
import org.barreltally.documents.PagesText;
import org.barreltally.documents.Papers;
import org.barreltally.documents.SheetRun;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The papers of a gift order. */
@Path("/api/gift-orders/{id}")
@Tag(name = "Papers")
public class GiftPapersApi {

  private static final int RECIPIENTS_LENGTH_MAX = 4000;

  private final GiftPapers papers;

  GiftPapersApi(GiftPapers papers) {
    this.papers = papers;
  }

  @GET
  @Path("/pick-list.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the pick list of a gift order: by place, then by recipient",
      description = "recipients names numbers and ranges (1,4,7-9); all if left out.")
  @APIResponse(
      responseCode = "200",
      description = "Pages",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "list", value = PdfAnswer.EXAMPLE)))
  public Response pickList(@PathParam("id") UUID id, @QueryParam("recipients") String recipients) {
    return drawn(papers.pickList(id, numbers(recipients)), "pick-list");
  }

  @GET
  @Path("/packing-slips.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the packing slips of a gift order, two on a page, without prices",
      description = "A substitute is said. home is the sender's country, US if left out.")
  @APIResponse(
      responseCode = "200",
      description = "Pages to be cut",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "slips", value = PdfAnswer.EXAMPLE)))
  public Response slips(
      @PathParam("id") UUID id,
      @QueryParam("recipients") String recipients,
      @QueryParam("home") String home) {
    return drawn(papers.slips(id, numbers(recipients), home(home)), "packing-slips");
  }

  @GET
  @Path("/greeting-cards.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the greeting cards of a gift order, four on a page",
      description = "For those who get one. The small number finds the box.")
  @APIResponse(
      responseCode = "200",
      description = "Pages to be cut",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "cards", value = PdfAnswer.EXAMPLE)))
  public Response cards(@PathParam("id") UUID id, @QueryParam("recipients") String recipients) {
    List<CardText> cards = papers.cards(id, numbers(recipients));
    if (cards.isEmpty()) {
      throw new NothingToPrint("None of these recipients gets a card.");
    }
    return PdfAnswer.of(Papers.cards(cards, papers.paper()), "greeting-cards");
  }

  @GET
  @Path("/address-labels.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the address labels of a gift order's parcels",
      description =
          "For those posted. The order of the lines is the country's"
              + " (db/reference/address_forms.csv, after the public guide of the Universal Postal"
              + " Union, from memory: compare with the sheet of the country you send to). sheet is"
              + " the owner's or letter-2x5; startAt the first label used on a part-used sheet."
              + " Print at 100 %.")
  @APIResponse(
      responseCode = "200",
      description = "Sheets of labels",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "labels", value = PdfAnswer.EXAMPLE)))
  public Response addresses(
      @PathParam("id") UUID id,
      @QueryParam("recipients") String recipients,
      @QueryParam("sheet") String sheet,
      @QueryParam("startAt") String startAt,
      @QueryParam("home") String home) {
    LabelSheet on = papers.sheet(sheet);
    List<AddressText> labels = papers.addresses(id, numbers(recipients), home(home));
    if (labels.isEmpty()) {
      throw new NothingToPrint("None of these recipients is posted to.");
    }
    SheetRun run = SheetRun.of(on, Asked.whole(startAt, "startAt"), labels.size());
    return PdfAnswer.of(Papers.addresses(labels, on, run.startAt()), "address-labels");
  }

  @GET
  @Path("/bill.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(summary = "Draw the bill of a gift order, with what was paid and the balance")
  @APIResponse(
      responseCode = "200",
      description = "Pages",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "bill", value = PdfAnswer.EXAMPLE)))
  public Response bill(@PathParam("id") UUID id, @QueryParam("home") String home) {
    return drawn(papers.bill(id, home(home)), "bill");
  }

  @GET
  @Path("/receipt.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(summary = "Draw the receipt for what was paid of a gift order")
  @APIResponse(
      responseCode = "200",
      description = "Pages",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "receipt", value = PdfAnswer.EXAMPLE)))
  public Response receipt(@PathParam("id") UUID id, @QueryParam("home") String home) {
    return drawn(papers.receipt(id, home(home)), "receipt");
  }

  @GET
  @Path("/lots.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(summary = "Draw the list of lots that each recipient of a gift order got")
  @APIResponse(
      responseCode = "200",
      description = "Pages",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "lots", value = PdfAnswer.EXAMPLE)))
  public Response lots(@PathParam("id") UUID id, @QueryParam("recipients") String recipients) {
    return drawn(papers.lots(id, numbers(recipients)), "lots");
  }

  private static Response drawn(PagesText text, String name) {
    if (text.blocks().isEmpty()) {
      throw new NothingToPrint("Every recipient is cancelled, or none was chosen.");
    }
    return PdfAnswer.of(Papers.pages(text), name);
  }

  private static String home(String said) {
    if (said == null) {
      return GiftPapers.HOME;
    }
    if (!said.matches("[A-Z]{2}")) {
      throw new InvalidField("home", "Give the two capitals of ISO 3166-1, for example US.");
    }
    return said;
  }

  /** Numbers and ranges: {@code 1,4,7-9}; null for all. */
  private static Set<Integer> numbers(String said) {
    if (said == null) {
      return null;
    }
    if (said.length() > RECIPIENTS_LENGTH_MAX
        || !said.matches("[0-9]{1,5}(-[0-9]{1,5})?(,[0-9]{1,5}(-[0-9]{1,5})?)*")) {
      throw new InvalidField("recipients", "Give numbers and ranges, for example 1,4,7-9.");
    }
    Set<Integer> numbers = new TreeSet<>();
    for (String part : said.split(",")) {
      String[] ends = part.split("-");
      int last = Integer.parseInt(ends[ends.length - 1]);
      for (int n = Integer.parseInt(ends[0]); n <= last; n++) {
        numbers.add(n);
      }
    }
    return numbers;
  }
}
