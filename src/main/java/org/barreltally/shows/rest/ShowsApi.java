package org.barreltally.shows.rest;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.PATCH;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Set;
import java.util.UUID;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shows.Booking;
import org.barreltally.shows.Bookings;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.Shows;
import org.barreltally.shows.Stepping;
import org.barreltally.web.Asked;
import org.barreltally.web.IfMatch;
import org.barreltally.web.MaybeOnce;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.barreltally.web.ReadAnew;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Shows: booked, changed, brought from state to state. */
@Path("/api/shows")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Shows")
public class ShowsApi {

  static final String BODY = "Send the record as JSON.";
  private static final String MERGE_PATCH = "application/merge-patch+json";

  private final Shows shows;
  private final Bookings bookings;
  private final Stepping stepping;
  private final BookingJson json;
  private final ShowReading reading;
  private final MaybeOnce maybeOnce;

  ShowsApi(
      Shows shows,
      Bookings bookings,
      Stepping stepping,
      BookingJson json,
      ShowReading reading,
      MaybeOnce maybeOnce) {
    this.shows = shows;
    this.bookings = bookings;
    this.stepping = stepping;
    this.json = json;
    this.reading = reading;
    this.maybeOnce = maybeOnce;
  }

  /** The state a show comes into. */
  public record NextState(ShowState state, String reason, Boolean allowOverlap) {}

  @GET
  @Operation(summary = "Shows by their first day", description = "Filters: year, state.")
  @APIResponse(
      responseCode = "200",
      description = "Shows, and where the list goes on",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one show",
                      value = "{\"items\": [" + ShowExamples.BOOKED + "]}")))
  public Page<ShowView> list(
      @QueryParam("year") String year,
      @QueryParam("state") String state,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    Shows.Filter filter =
        new Shows.Filter(
            Asked.year(year, "year"),
            Asked.oneOf(ShowState.values(), ShowState::code, state, "state"));
    return page.page(
        shows.list(filter, page.after(Shows.Key::of).orElse(null), page.limit() + 1).stream()
            .map(ShowView::of)
            .toList(),
        view -> new Shows.Key(view.booking().starts(), view.id()).text());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Book a show",
      description =
          "Needed: name, town, starts, ends. A helper, vehicle or tableKit that is at another show"
              + " between its set-up and the end of its last day is refused with 409 show-clash, unless"
              + " allowOverlap is true. setUp and deadlines are dates, or instants where the hour"
              + " matters.")
  @APIResponse(
      responseCode = "201",
      description = "The show",
      content =
          @Content(
              schema = @Schema(implementation = ShowView.class),
              examples = @ExampleObject(name = "booked", value = ShowExamples.BOOKED)))
  public Response book(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      schema = @Schema(allOf = {Booking.class, BookingJson.Beside.class}),
                      examples = @ExampleObject(name = "a fair", value = ShowExamples.BOOK)))
          JsonNode said)
      throws JsonProcessingException {
    BookingJson.Told told = json.read(said);
    Response answer =
        maybeOnce.answer(
            key,
            said,
            () -> {
              UUID id =
                  bookings
                      .book(told.booking(), told.beside().state(), told.beside().overlapAllowed())
                      .id();
              return ReadAnew.kept(URI.create("/api/shows/" + id));
            });
    Show show = shows.at(UUID.fromString(ReadAnew.identity(answer.getLocation())));
    return Response.created(answer.getLocation())
        .entity(ShowView.of(show))
        .tag(version(show))
        .build();
  }

  @GET
  @Path("/{id}")
  @Operation(
      summary = "One show with its table, payments, promises, findings, to-dos and awards",
      description = "The ETag goes into If-Match of a later change.")
  @APIResponse(
      responseCode = "200",
      description = "The show",
      content =
          @Content(
              schema = @Schema(implementation = ShowDetails.class),
              examples = @ExampleObject(name = "booked", value = ShowExamples.BOOKED)))
  public Response at(@PathParam("id") UUID id) {
    ShowDetails details = reading.of(id);
    return Response.ok(details).tag(String.valueOf(details.show().version())).build();
  }

  @PATCH
  @Path("/{id}")
  @Consumes({MediaType.APPLICATION_JSON, MERGE_PATCH})
  @Operation(
      summary = "Change what is booked",
      description =
          "What is not named stays; null takes a field away (RFC 7396). With If-Match a change is"
              + " refused with 412 if somebody else changed the show since it was read.")
  @APIResponse(
      responseCode = "200",
      description = "The show as it stands now",
      content =
          @Content(
              schema = @Schema(implementation = ShowView.class),
              examples = @ExampleObject(name = "booked", value = ShowExamples.BOOKED)))
  public Response change(
      @PathParam("id") UUID id,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      schema = @Schema(allOf = {Booking.class, BookingJson.Beside.class}),
                      examples =
                          @ExampleObject(name = "another helper", value = ShowExamples.CHANGE)))
          JsonNode said)
      throws JsonProcessingException {
    Show before = shows.at(id);
    BookingJson.Told told = json.merged(before.booking(), said);
    if (told.beside().state() != null) {
      throw new InvalidField("state", "Post the state to /api/shows/" + id + "/state.");
    }
    Set<String> read = IfMatch.versions(ifMatch);
    // The patch was merged into what stood there just now: nothing else may be overwritten by it.
    Set<String> versions = read == null ? Set.of(version(before)) : read;
    return tagged(bookings.change(id, versions, told.booking(), told.beside().overlapAllowed()));
  }

  @POST
  @Path("/{id}/state")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Bring a show into its next state",
      description =
          "accepted, declined, paid, packed, running or closed; each show tells in next what may"
              + " follow. Paid notes the rest of the flat fee as paid today. Call-off and settlement"
              + " have addresses of their own.")
  @APIResponse(
      responseCode = "200",
      description = "The show as it stands now",
      content =
          @Content(
              schema = @Schema(implementation = ShowView.class),
              examples = @ExampleObject(name = "booked", value = ShowExamples.BOOKED)))
  public Response step(
      @PathParam("id") UUID id,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "a place was given",
                              value = "{\"state\": \"accepted\"}")))
          NextState said) {
    return tagged(
        stepping.step(
            id,
            IfMatch.versions(ifMatch),
            said.state(),
            said.reason(),
            Boolean.TRUE.equals(said.allowOverlap())));
  }

  private static Response tagged(Show show) {
    return Response.ok(ShowView.of(show)).tag(version(show)).build();
  }

  private static String version(Show show) {
    return String.valueOf(show.version());
  }
}
