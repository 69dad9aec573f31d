package org.barreltally.gifts.rest;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.gifts.Buyer;
import org.barreltally.gifts.GiftOrdering;
import org.barreltally.gifts.OrderGifts;
import org.barreltally.gifts.RecipientFile;
import org.barreltally.web.Answer;
import org.barreltally.web.IfMatch;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Files of recipients: a new order of them, or more of them for an order. */
@Path("/api/gift-orders")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class GiftOrderFilesApi {

  private static final String ABOUT =
      "RFC 4180, commas or semicolons, UTF-8 or Windows-1252, with a header or without one."
          + " Columns, in this order without a header: name, line1, line2, town, region, postcode,"
          + " country, box, count, card, delivery, postage, sendBy, wantedBy, carrier. Everything"
          + " that needs mending is named by line and column at once, and nothing is taken until"
          + " the file is clean.";

  /** What is compared when the same key comes again. */
  private record Sent(String buyer, byte[] file) {}

  private final GiftOrdering ordering;
  private final RecipientFile files;
  private final Once once;

  GiftOrderFilesApi(GiftOrdering ordering, RecipientFile files, Once once) {
    this.ordering = ordering;
    this.files = files;
    this.once = once;
  }

  @POST
  @Path("/from-file")
  @Consumes("text/csv")
  @Operation(summary = "Take a gift order from a file of recipients", description = ABOUT)
  @APIResponse(
      responseCode = "201",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response take(
      @HeaderParam("Idempotency-Key") String key,
      @QueryParam("buyer") String buyer,
      @RequestBody(
              content =
                  @Content(
                      mediaType = "text/csv",
                      schema = @Schema(implementation = String.class),
                      examples = @ExampleObject(name = "two aunts", value = GiftExamples.CSV)))
          byte[] file) {
    return once.answer(
        key,
        new Sent(buyer, file),
        () ->
            GiftOrdersApi.taken(
                ordering.take(
                    new OrderGifts(
                        new Buyer(buyer, null, null, null, null), files.read(file), null, null))));
  }

  @POST
  @Path("/{id}/recipients-file")
  @Consumes("text/csv")
  @Operation(summary = "Add the recipients of a file to a gift order", description = ABOUT)
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response add(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @RequestBody(
              content =
                  @Content(
                      mediaType = "text/csv",
                      schema = @Schema(implementation = String.class),
                      examples = @ExampleObject(name = "two aunts", value = GiftExamples.CSV)))
          byte[] file) {
    return once.answer(
        key,
        new Sent(null, file),
        () ->
            Answer.ok(
                OrderView.withoutPeople(
                    ordering.add(id, IfMatch.versions(ifMatch), files.read(file)))));
  }
}
