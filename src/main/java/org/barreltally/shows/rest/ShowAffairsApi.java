package org.barreltally.shows.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.shows.CallingOff;
import org.barreltally.shows.Payment;
import org.barreltally.shows.Payments;
import org.barreltally.shows.Promises;
import org.barreltally.shows.ShowRecords;
import org.barreltally.shows.ToDo;
import org.barreltally.web.Answer;
import org.barreltally.web.IfMatch;
import org.barreltally.web.MaybeOnce;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What is promised to a show and paid for it, calling it off, and what is left to do. */
@Path("/api/shows")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Shows")
public class ShowAffairsApi {

  private static final String RESERVATION =
      """
      {"reservation": "01a0c0de-7000-7000-8000-00000000000a",
       "open": [{"container": "PT", "grade": "amber", "count": 60}]}
      """;

  private final Promises promises;
  private final Payments payments;
  private final CallingOff callingOff;
  private final ShowRecords records;
  private final Once once;
  private final MaybeOnce maybeOnce;

  ShowAffairsApi(
      Promises promises,
      Payments payments,
      CallingOff callingOff,
      ShowRecords records,
      Once once,
      MaybeOnce maybeOnce) {
    this.promises = promises;
    this.payments = payments;
    this.callingOff = callingOff;
    this.records = records;
    this.once = once;
    this.maybeOnce = maybeOnce;
  }

  /** Jars to be promised. */
  public record Reserve(List<Promises.Line> lines) {}

  /** What was paid to the organiser, or came back where it is below zero. */
  public record Pay(Money amount, LocalDate on, String note) {}

  /** Why a show is called off, and what the organiser gave back. */
  public record CallOff(String reason, Money refund) {}

  /** Nothing needs to be said. */
  public record Nothing() {}

  @POST
  @Path("/{id}/reservations")
  @Operation(
      summary = "Promise jars to a show before they are packed out",
      description = "All lines or none. Packing out uses it up; calling off and closing free it.")
  @APIResponse(
      responseCode = "201",
      description = "The reservation and what of it is open",
      content = @Content(schema = @Schema(implementation = Promises.Promise.class)))
  public Response reserve(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "pints",
                              value =
                                  """
                                  {"lines": [{"container": "PT", "grade": "amber", "count": 60}]}
                                  """)))
          Reserve said) {
    return maybeOnce.answer(
        key,
        said,
        () ->
            Answer.created(
                URI.create("/api/shows/" + id),
                promises.reserve(id, IfMatch.versions(ifMatch), said.lines())));
  }

  @POST
  @Path("/{id}/reservations/{reservation}/release")
  @Operation(summary = "Free what of a show's reservation is still open")
  @APIResponse(
      responseCode = "200",
      description = "The reservation, with nothing open any more",
      content =
          @Content(
              schema = @Schema(implementation = Promises.Promise.class),
              examples = @ExampleObject(name = "before", value = RESERVATION)))
  public Promises.Promise release(
      @PathParam("id") UUID id, @PathParam("reservation") UUID reservation, Nothing nothing) {
    return promises.release(id, reservation);
  }

  @POST
  @Path("/{id}/payments")
  @Operation(
      summary = "Note what was paid to the organiser",
      description =
          "Flat fee and deposit alike; below zero where money came back. An accepted show whose flat"
              + " fee is paid in full becomes paid.")
  @APIResponse(
      responseCode = "201",
      description = "The payment",
      content = @Content(schema = @Schema(implementation = Payment.class)))
  public Response pay(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "deposit",
                              value =
                                  """
                                  {"amount": {"amount": 40.00, "currency": "USD"},
                                   "on": "2026-05-20", "note": "Deposit, by cheque"}
                                  """)))
          Pay said) {
    return once.answer(
        key,
        said,
        () ->
            Answer.created(
                URI.create("/api/shows/" + id),
                payments.pay(
                    id, IfMatch.versions(ifMatch), said.amount(), said.on(), said.note())));
  }

  @POST
  @Path("/{id}/call-off")
  @Operation(
      summary = "Call a show off",
      description =
          "What was reserved is free again; what was paid and not refunded stays a cost. Jars that are"
              + " out come home by back, and their labels are put on the list to be looked at.")
  @APIResponse(
      responseCode = "200",
      description = "What was freed, what stays a cost, and how many jars have to come home",
      content = @Content(schema = @Schema(implementation = CallingOff.CalledOff.class)))
  public Response callOff(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "rained out",
                              value = "{\"reason\": \"Field under water\"}")))
          CallOff said) {
    return maybeOnce.answer(
        key,
        said,
        () ->
            Answer.ok(
                callingOff.callOff(id, IfMatch.versions(ifMatch), said.reason(), said.refund())));
  }

  @POST
  @Path("/{id}/to-dos/{toDo}/done")
  @Operation(summary = "Mark something that was to be done after a show as done")
  @APIResponse(
      responseCode = "200",
      description = "The to-do",
      content =
          @Content(
              schema = @Schema(implementation = ToDo.class),
              examples =
                  @ExampleObject(
                      name = "labels",
                      value =
                          """
                          {"id": "01a0c0de-7000-7000-8000-00000000000b", "kind": "wet-labels",
                           "container": "PT", "lot": "P260620-1", "count": 3,
                           "reason": "3 × PT of lot P260620-1 came home with wet or loose labels.",
                           "since": "2026-10-04T22:10:00Z", "doneAt": "2026-10-05T13:00:00Z"}
                          """)))
  public ToDo done(@PathParam("id") UUID id, @PathParam("toDo") UUID toDo, Nothing nothing) {
    return records.done(id, toDo);
  }
}
