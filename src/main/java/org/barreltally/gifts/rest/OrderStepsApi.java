package org.barreltally.gifts.rest;

import jakarta.validation.constraints.NotNull;
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
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.gifts.GiftOrdering;
import org.barreltally.gifts.GiftOrders;
import org.barreltally.gifts.Payer;
import org.barreltally.gifts.Picking;
import org.barreltally.gifts.Recipient;
import org.barreltally.gifts.Reserving;
import org.barreltally.gifts.Sending;
import org.barreltally.pricing.Money;
import org.barreltally.web.Answer;
import org.barreltally.web.IfMatch;
import org.barreltally.web.MayBeEmpty;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What is done with a whole gift order, or with many of its recipients at once. */
@Path("/api/gift-orders/{id}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class OrderStepsApi {

  /** Nothing needs to be said; a body may be empty. */
  public record Nothing() {}

  /** Recipients to add. */
  public record More(List<Recipient> recipients) {}

  /** Money of the buyer; today if no day is given. */
  public record Paid(Money amount, LocalDate on) {}

  /** Which recipients, by number (all at that step if left out), and how. */
  public record Many(
      List<Integer> recipients,
      LocalDate on,
      String place,
      String carrier,
      Money postage,
      Payer paidBy) {}

  private static final String MANY = "{\"recipients\": [1, 2, 3], \"on\": \"2026-12-07\"}";

  private final GiftOrders orders;
  private final GiftOrdering ordering;
  private final Reserving reserving;
  private final Picking picking;
  private final Sending sending;
  private final Once once;

  OrderStepsApi(
      GiftOrders orders,
      GiftOrdering ordering,
      Reserving reserving,
      Picking picking,
      Sending sending,
      Once once) {
    this.orders = orders;
    this.ordering = ordering;
    this.reserving = reserving;
    this.picking = picking;
    this.sending = sending;
    this.once = once;
  }

  private interface Act {
    void on(Set<String> versions);
  }

  private Response done(UUID id, String key, String ifMatch, Object said, Act act) {
    return once.answer(
        key,
        said == null ? Map.of() : said,
        () -> {
          act.on(IfMatch.versions(ifMatch));
          return Answer.ok(OrderView.withoutPeople(orders.at(id)));
        });
  }

  @POST
  @Path("/reserve")
  @Operation(
      summary = "Reserve the jars of an order, all or nothing",
      description =
          "For every recipient who still waits for them. Where the first choice is short, an"
              + " allowed substitute is taken, in the order of the recipe. 409 short-of-stock names"
              + " what is short and for whom; then nothing is reserved.")
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response reserve(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(content = @Content(examples = @ExampleObject(name = "all", value = "{}")))
          Nothing said) {
    return done(id, key, ifMatch, said, versions -> reserving.reserve(id, versions));
  }

  @POST
  @Path("/release")
  @Operation(summary = "Let go what is reserved for recipients whose jars are not picked yet")
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response release(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(content = @Content(examples = @ExampleObject(name = "all", value = "{}")))
          Nothing said) {
    return done(id, key, ifMatch, said, versions -> reserving.release(id, versions));
  }

  @POST
  @Path("/recipients")
  @Operation(
      summary = "Add recipients to an order",
      description = "They are reserved when the order is reserved again.")
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response add(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "one more",
                              value =
                                  """
                                  {"recipients": [{"name": "Uncle Barnaby Quillfeather", "box": "Taster",
                                    "count": 1, "delivery": "by-hand", "sendBy": "2026-12-20"}]}
                                  """)))
          More said) {
    return done(id, key, ifMatch, said, versions -> ordering.add(id, versions, said.recipients()));
  }

  @POST
  @Path("/payments")
  @Operation(summary = "Money came from the buyer; below zero if it was paid back")
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response pay(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "the balance",
                              value =
                                  "{\"amount\": {\"amount\": 250.25, \"currency\": \"USD\"},"
                                      + " \"on\": \"2026-12-28\"}")))
          Paid said) {
    return done(
        id, key, ifMatch, said, versions -> ordering.pay(id, versions, said.amount(), said.on()));
  }

  @POST
  @Path("/pick")
  @Operation(
      summary = "Pick for many recipients at once, which fixes the lots",
      description = "For all who are confirmed if recipients is left out.")
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response pick(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(content = @Content(examples = @ExampleObject(name = "three", value = MANY)))
          Many said) {
    Many many = orAll(said);
    return done(
        id,
        key,
        ifMatch,
        said,
        versions ->
            picking.pick(
                id, versions, many.recipients(), new Picking.How(many.on(), many.place())));
  }

  @POST
  @Path("/pack")
  @Operation(summary = "Pack for many recipients at once; for all who are picked if left out")
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response pack(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(content = @Content(examples = @ExampleObject(name = "three", value = MANY)))
          Many said) {
    Many many = orAll(said);
    return done(
        id,
        key,
        ifMatch,
        said,
        versions -> sending.pack(id, versions, many.recipients(), many.on()));
  }

  @POST
  @Path("/send")
  @Operation(summary = "Send for many recipients at once; for all who are packed if left out")
  @APIResponse(
      responseCode = "200",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response send(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(content = @Content(examples = @ExampleObject(name = "three", value = MANY)))
          Many said) {
    Many many = orAll(said);
    return done(
        id,
        key,
        ifMatch,
        said,
        versions ->
            sending.send(
                id,
                versions,
                many.recipients(),
                new Sending.How(many.on(), many.carrier(), many.postage(), many.paidBy())));
  }

  private static Many orAll(Many said) {
    return said == null ? new Many(null, null, null, null, null, null) : said;
  }
}
