package org.barreltally.ledger.rest;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import jakarta.ws.rs.Consumes;
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
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movements;
import org.barreltally.ledger.PostedMovement;
import org.barreltally.refusal.InvalidField;
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

/** What moved, and taking it back. */
@Path("/api/movements")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Ledger")
public class MovementsApi {

  /** Why a movement is taken back. */
  public record Reversal(
      @NotBlank(message = "Say why the movement is taken back.")
          @Size(max = 500, message = "Say it in at most 500 characters.")
          String reason) {}

  private final Movements movements;
  private final Ledger ledger;
  private final Once once;

  MovementsApi(Movements movements, Ledger ledger, Once once) {
    this.movements = movements;
    this.ledger = ledger;
    this.once = once;
  }

  @GET
  @Operation(
      summary = "List movements in the order they were recorded",
      description =
          "By item (its id), by lot, by place (its code), by the first and last day on which they"
              + " happened, by the year they are booked in, and by whether they came late (true,"
              + " false). canBeTakenBack says where a reversal may be tried.")
  public Page<PostedMovement> list(
      @QueryParam("item") String item,
      @QueryParam("place") String place,
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("lot") String lot,
      @QueryParam("bookYear") String bookYear,
      @QueryParam("late") String late,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    LocalDate first = Asked.day(from, "from");
    LocalDate last = Asked.day(to, "to");
    if (first != null && last != null && last.isBefore(first)) {
      throw new InvalidField("to", "The last day is before the first, " + first + ".");
    }
    Movements.Filter filter =
        new Movements.Filter(
            Parameters.uuid(item, "item"),
            place,
            first,
            last,
            Asked.whole(bookYear, "bookYear"),
            Asked.yesOrNo(late, "late"),
            lot);
    return page.page(
        movements.list(filter, page.after(UUID::fromString).orElse(null), page.limit() + 1),
        movement -> movement.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One movement with its entries")
  @APIResponse(
      responseCode = "200",
      description = "The movement",
      content =
          @Content(
              schema = @Schema(implementation = PostedMovement.class),
              examples =
                  @ExampleObject(
                      name = "two broken pints",
                      value =
                          """
                          {"id": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "kind": "write-off",
                           "happenedAt": "2026-06-21T14:05:00Z",
                           "recordedAt": "2026-06-21T14:05:00Z", "bookYear": 2026, "late": false,
                           "canBeTakenBack": true,
                           "entries": [
                             {"place": "broken", "item": "01980f30-1111-7b52-8f4e-3d1f6a1b2c3d",
                              "lot": "P260620-1", "container": "PT", "amount": 2,
                              "unit": "piece", "balanceAfter": 2},
                             {"place": "cool-room", "item": "01980f30-1111-7b52-8f4e-3d1f6a1b2c3d",
                              "lot": "P260620-1", "container": "PT", "amount": -2,
                              "unit": "piece", "balanceAfter": 158}]}
                          """)))
  public PostedMovement one(@PathParam("id") UUID id) {
    return movements.at(id);
  }

  @POST
  @Path("/{id}/reversal")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take a movement back",
      description =
          "Everything goes the other way, dated when the original happened; nothing is erased."
              + " Refused if it was taken back already or if what it brought has left since.")
  @APIResponse(
      responseCode = "201",
      description = "The reversal",
      content = @Content(schema = @Schema(implementation = PostedMovement.class)))
  public Response reverse(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "wrong size",
                              value = "{\"reason\": \"They were half-pints, not pints\"}")))
          Reversal said) {
    return once.answer(
        key,
        said,
        () -> {
          UUID reversal = ledger.reverse(id, said.reason());
          return Answer.created(URI.create("/api/movements/" + reversal), movements.at(reversal));
        });
  }
}
