package org.barreltally.gifts.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.Foresight;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.GiftOrdering;
import org.barreltally.gifts.GiftOrders;
import org.barreltally.gifts.OrderGifts;
import org.barreltally.gifts.Outlook;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
import org.barreltally.web.Once;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Gift orders: taken, thought through before, and read. */
@Path("/api/gift-orders")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class GiftOrdersApi {

  /** Orders are read whole, so a part of the list is short. */
  private static final int AT_ONCE = 50;

  private final GiftOrders orders;
  private final GiftOrdering ordering;
  private final Foresight foresight;
  private final Once once;

  GiftOrdersApi(GiftOrders orders, GiftOrdering ordering, Foresight foresight, Once once) {
    this.orders = orders;
    this.ordering = ordering;
    this.foresight = foresight;
    this.once = once;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take a gift order",
      description =
          "Recipients are numbered from 1, at most 2,000. box is the id of a gift box or its name."
              + " A posted parcel needs an address and sendBy, or wantedBy and a carrier's table to"
              + " work it back from. deposit is what was paid with the order. Nothing is reserved"
              + " by it. Names are not in the answer; read them at Location.")
  @APIResponse(
      responseCode = "201",
      description = "The order without names and addresses",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  public Response take(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "two aunts", value = GiftExamples.TWO_AUNTS)))
          OrderGifts said) {
    return once.answer(key, said, () -> taken(ordering.take(said)));
  }

  static Answer taken(GiftOrder order) {
    return Answer.created(
        URI.create("/api/gift-orders/" + order.head().id()), OrderView.withoutPeople(order));
  }

  @POST
  @Path("/what-if")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "See what an order would need and what there will be, storing nothing",
      description =
          "By each day on which parcels leave: what can be promised, what is booked elsewhere by"
              + " then, what is planned to be canned by then (planned=true counts it), and which"
              + " substitutes would be taken.")
  @APIResponse(
      responseCode = "200",
      description = "The outlook",
      content = @Content(schema = @Schema(implementation = Outlook.class)))
  public Outlook whatIf(
      @QueryParam("planned") String planned,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "two aunts", value = GiftExamples.TWO_AUNTS)))
          OrderGifts said) {
    return foresight.before(said, Asked.yes(planned, "planned"));
  }

  @GET
  @Operation(summary = "Gift orders in the order they were recorded, at most 50 at once")
  public Page<OrderView> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit == null ? String.valueOf(AT_ONCE) : limit, after);
    List<GiftOrder> found =
        orders.list(page.after(UUID::fromString).orElse(null), page.limit() + 1);
    return page.page(found.stream().map(OrderView::of).toList(), view -> view.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(
      summary = "One gift order with its recipients, their states, jars by lot, steps and the bill")
  public Response one(@PathParam("id") UUID id) {
    OrderView view = OrderView.of(orders.at(id));
    return Response.ok(view).tag(Long.toString(view.version())).build();
  }

  @GET
  @Path("/{id}/availability")
  @Operation(summary = "What of an order is not reserved yet, and what there will be by its days")
  public Outlook outlook(@PathParam("id") UUID id, @QueryParam("planned") String planned) {
    return foresight.of(id, Asked.yes(planned, "planned"));
  }

  @DELETE
  @Path("/{id}/people")
  @Operation(
      summary = "Remove names, addresses and card texts of an order that is resolved",
      description = "Goods, money, lots and steps stay.")
  @APIResponse(responseCode = "204", description = "Removed")
  public void forget(@PathParam("id") UUID id) {
    ordering.forget(id);
  }
}
