package org.barreltally.gifts.rest;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.Cancelling;
import org.barreltally.gifts.Picking;
import org.barreltally.gifts.Sending;
import org.barreltally.gifts.Undoing;
import org.barreltally.web.MayBeEmpty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The way of one recipient's boxes. Every body may be left out. */
@Path("/api/gift-orders/{id}/recipients/{n}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class RecipientApi {

  /** On which day; today if left out. */
  public record On(LocalDate on) {}

  /** Why. */
  public record Why(String reason) {}

  private static final String DAY = "{\"on\": \"2026-12-07\"}";
  private static final Sending.How AS_ORDERED = new Sending.How(null, null, null, null);

  private final Picking picking;
  private final Sending sending;
  private final Cancelling cancelling;
  private final Undoing undoing;
  private final RecipientAnswer answer;

  RecipientApi(
      Picking picking,
      Sending sending,
      Cancelling cancelling,
      Undoing undoing,
      RecipientAnswer answer) {
    this.picking = picking;
    this.sending = sending;
    this.cancelling = cancelling;
    this.undoing = undoing;
    this.answer = answer;
  }

  @POST
  @Path("/pick")
  @Operation(
      summary =
          "Pick a recipient's jars, which fixes their lots: the oldest packed first, never held",
      description =
          "From the cool room unless place says otherwise. After a return was inspected, what is"
              + " missing is reserved and picked.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response pick(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "picked",
                              value = "{\"on\": \"2026-12-07\", \"place\": \"cool-room\"}")))
          Picking.How said) {
    Picking.How how = said == null ? new Picking.How(null, null) : said;
    return answer.after(
        id, n, key, ifMatch, said, versions -> picking.pick(id, versions, List.of(n), how));
  }

  @POST
  @Path("/pack")
  @Operation(summary = "Pack a recipient's boxes; refused where a lot was held since it was picked")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response pack(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(content = @Content(examples = @ExampleObject(name = "packed", value = DAY)))
          On said) {
    return answer.after(
        id, n, key, ifMatch, said, versions -> sending.pack(id, versions, List.of(n), day(said)));
  }

  @POST
  @Path("/send")
  @Operation(
      summary = "Send a recipient's boxes on their way; the jars leave the book",
      description =
          "What came back and is whole is sent again from here. postage is as ordered and paidBy"
              + " the buyer unless told otherwise.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response send(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "sent again at the buyer's cost",
                              value =
                                  """
                                  {"on": "2026-12-16", "carrier": "Parcel post",
                                   "postage": {"amount": 12.50, "currency": "USD"}, "paidBy": "buyer"}
                                  """)))
          Sending.How said) {
    Sending.How how = said == null ? AS_ORDERED : said;
    return answer.after(
        id, n, key, ifMatch, said, versions -> sending.send(id, versions, List.of(n), how));
  }

  @POST
  @Path("/deliver")
  @Operation(
      summary = "The boxes arrived, were collected or were handed over",
      description = "What is collected or carried by hand needs no send before.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response deliver(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(content = @Content(examples = @ExampleObject(name = "there", value = DAY)))
          On said) {
    return answer.after(
        id,
        n,
        key,
        ifMatch,
        said,
        versions -> sending.deliver(id, versions, List.of(n), day(said)));
  }

  @POST
  @Path("/cancel")
  @Operation(
      summary = "Take a recipient out: exactly his jars become free",
      description =
          "Before sending, or after a return was inspected. What was picked goes to the cool room.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response cancel(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "cancelled",
                              value = "{\"reason\": \"The buyer asked\"}")))
          Why said) {
    return answer.after(
        id, n, key, ifMatch, said, versions -> cancelling.cancel(id, versions, n, reason(said)));
  }

  @POST
  @Path("/undo")
  @Operation(
      summary = "Take the last step of a recipient back by a reversal",
      description = "Again takes the one before it back. Nothing is deleted.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response undo(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "slip",
                              value = "{\"reason\": \"Wrong recipient\"}")))
          Why said) {
    return answer.after(
        id, n, key, ifMatch, said, versions -> undoing.undo(id, versions, n, reason(said)));
  }

  private static LocalDate day(On said) {
    return said == null ? null : said.on();
  }

  private static String reason(Why said) {
    return said == null ? null : said.reason();
  }
}
