package org.barreltally.sales.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.sales.away.AwaySelling;
import org.barreltally.sales.away.Inspect;
import org.barreltally.sales.away.Returned;
import org.barreltally.sales.away.Returns;
import org.barreltally.sales.away.SellAway;
import org.barreltally.sales.away.SoldAway;
import org.barreltally.sales.away.TakeBack;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Sales at the farm gate, by post and wholesale, and jars that come back. */
@Path("/api/sales")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Sales")
public class AwaySalesApi {

  private static final String RETURNED =
      """
      {"items": [{"id": "01a0c101-2222-7000-8000-0000000000e1",
        "sale": "01a0c101-2222-7000-8000-000000000001",
        "movement": "01a0c101-2222-7000-8000-0000000000e2", "reason": "Box crushed in the post",
        "refund": {"amount": 15.00, "currency": "USD"}, "recordedAt": "2026-10-20T15:00:00Z",
        "lines": [{"container": "PT", "lot": "P260620-1", "count": 2, "toInspect": 2}]}]}
      """;

  private final AwaySelling selling;
  private final Returns returns;
  private final Once once;

  AwaySalesApi(AwaySelling selling, Returns returns, Once once) {
    this.selling = selling;
    this.returns = returns;
    this.once = once;
  }

  /** The returns of a sale. */
  public record ReturnList(List<Returned> items) {}

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Sell at the farm gate, by post or wholesale",
      description =
          "From the cool room unless told otherwise, and never below zero. A line without lot takes the"
              + " oldest lots that are not held, and says so in notes. The invoice or receipt is numbered"
              + " at once. The buyer's name is not in the answer; read it at invoice.")
  @APIResponse(
      responseCode = "201",
      description = "The sale",
      content = @Content(schema = @Schema(implementation = AwaySaleView.class)))
  public Response sell(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "by post",
                              value =
                                  """
                                  {"channel": "post",
                                   "buyer": {"name": "Hesper Loomworks", "address": ["4 Weir Lane", "Fernby"]},
                                   "lines": [{"container": "PT", "lot": "P260620-1", "count": 2,
                                              "price": {"amount": 15.00, "currency": "USD"}}],
                                   "paid": {"owing": {"amount": 30.00, "currency": "USD"}}}
                                  """)))
          SellAway said) {
    return once.answer(
        key,
        said,
        () -> {
          SoldAway sold = selling.sell(said);
          return Answer.created(
              URI.create("/api/sales/" + sold.sale().id()), AwaySaleView.of(sold, false));
        });
  }

  @GET
  @Path("/{id}/invoice")
  @Operation(summary = "A sale away from shows with its number and buyer")
  @APIResponse(
      responseCode = "200",
      description = "What the invoice or receipt says",
      content =
          @Content(
              schema = @Schema(implementation = AwaySaleView.class),
              examples =
                  @ExampleObject(
                      name = "by post",
                      value =
                          """
                          {"id": "01a0c101-2222-7000-8000-000000000001", "number": "2026-0007",
                           "issuedOn": "2026-10-06", "channel": "post", "place": "cool-room",
                           "buyer": {"name": "Hesper Loomworks", "address": ["4 Weir Lane", "Fernby"]},
                           "total": {"amount": 30.00, "currency": "USD"}, "undone": false}
                          """)))
  public AwaySaleView invoice(@PathParam("id") UUID id) {
    return AwaySaleView.of(selling.at(id), true);
  }

  @DELETE
  @Path("/{id}/buyer")
  @Operation(
      summary = "Remove a buyer's name and address from a sale",
      description = "The sale, its number and its jars stay.")
  public void forgetBuyer(@PathParam("id") UUID id) {
    selling.forgetBuyer(id);
  }

  @POST
  @Path("/{id}/returns")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take jars of a sale back, to be inspected",
      description =
          "They wait at to-inspect, where they cannot be promised, until an inspection says what is sound.")
  @APIResponse(
      responseCode = "201",
      description = "The return",
      content = @Content(schema = @Schema(implementation = Returned.class)))
  public Response takeBack(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "crushed box",
                              value =
                                  """
                                  {"lines": [{"container": "PT", "lot": "P260620-1", "count": 2}],
                                   "reason": "Box crushed in the post",
                                   "refund": {"amount": 15.00, "currency": "USD"}}
                                  """)))
          TakeBack said) {
    return once.answer(
        key,
        said,
        () -> {
          Returned back = returns.takeBack(id, said);
          return Answer.created(URI.create("/api/sales/" + id + "/returns"), back);
        });
  }

  @GET
  @Path("/{id}/returns")
  @Operation(summary = "What came back of a sale, and what of it waits for inspection")
  @APIResponse(
      responseCode = "200",
      description = "The returns",
      content = @Content(examples = @ExampleObject(name = "two pints", value = RETURNED)))
  public ReturnList returns(@PathParam("id") UUID id) {
    return new ReturnList(returns.of(id));
  }

  @POST
  @Path("/returns/{id}/inspection")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Note how returned jars were found",
      description =
          "Sound jars are stock again. Look at seal, glass and label, and where the jars have been; what"
              + " is in doubt is discarded. Your inspector and local food rules decide what may be sold"
              + " again.")
  @APIResponse(
      responseCode = "200",
      description = "The return, with what still waits",
      content = @Content(schema = @Schema(implementation = Returned.class)))
  public Response inspect(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "one cracked",
                              value =
                                  """
                                  {"lines": [{"container": "PT", "lot": "P260620-1", "sound": 1, "broken": 1}]}
                                  """)))
          Inspect said) {
    return once.answer(key, said, () -> Answer.ok(returns.inspect(id, said)));
  }
}
