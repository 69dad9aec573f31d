package org.barreltally.stock.rest;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
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
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.Movements;
import org.barreltally.stock.Cause;
import org.barreltally.stock.CountShelf;
import org.barreltally.stock.StockCount;
import org.barreltally.stock.rounds.CountRound;
import org.barreltally.stock.rounds.CountRound.Jar;
import org.barreltally.stock.rounds.Rounds;
import org.barreltally.web.Answer;
import org.barreltally.web.Because;
import org.barreltally.web.Once;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Counting rounds: two counters who see neither the book nor each other. */
@Path("/api/stock/count-rounds")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Stock")
public class CountRoundsApi {

  private static final String COUNTED = "Give a whole number of jars from 0 to 1,000,000.";
  private static final String BODY = "Send the record as JSON.";

  /** The place to be counted. */
  public record Open(@NotBlank(message = "Name the place to be counted.") String place) {}

  /** What one counter found; {@code countedAt} is now where it is left out. */
  public record Sheet(
      @NotBlank(message = "Say who counted.")
          @Size(max = 80, message = "Give a name of at most 80 characters.")
          String by,
      Instant countedAt,
      @NotEmpty(message = "Give at least one line: container, lot and count.")
          @Size(max = CountShelf.LINES_MAX, message = "Give at most 2,000 lines.")
          List<@Valid @NotNull(message = "Give container, lot and count.") SheetLine> lines) {}

  /** Jars of one lot and size; zero if there are none. */
  public record SheetLine(
      @NotBlank(message = "Give the code of a container, for example PT.") @Size(max = 12)
          String container,
      @NotBlank(message = "Give the code of the lot on the label.") @Size(max = 20) String lot,
      @NotNull(message = COUNTED)
          @Min(value = 0, message = COUNTED)
          @Max(value = 1_000_000, message = COUNTED)
          Long count) {}

  /** What became of jars that are short, where somebody knows. */
  public record Posting(
      @Size(max = CountShelf.LINES_MAX, message = "Give at most 2,000 causes.")
          List<@Valid @NotNull(message = "Give container, lot and cause.") Known> causes) {}

  public record Known(
      @NotBlank(message = "Give the container.") String container,
      @NotBlank(message = "Give the lot.") String lot,
      @NotNull(message = "Give a cause.") Cause cause) {}

  /**
   * A round, without a figure of the book or of a counter.
   *
   * @param state {@code first, second, recount, agreed, posted, given-up}: what it waits for, or
   *     its end
   * @param toRecount what the counters do not agree about
   * @param count the count that was posted; read it at /api/stock/counts/{id}
   */
  public record Round(
      UUID id,
      String place,
      String state,
      Instant openedAt,
      int sheets,
      List<Jar> toRecount,
      UUID count,
      String reason) {

    static Round of(CountRound round) {
      return new Round(
          round.id(),
          round.place(),
          round.state(),
          round.openedAt(),
          round.sheets().size(),
          "recount".equals(round.state()) ? round.differing() : List.of(),
          round.end() == null ? null : round.end().count(),
          round.end() == null ? null : round.end().reason());
    }
  }

  private final Rounds rounds;
  private final Movements movements;
  private final Once once;

  CountRoundsApi(Rounds rounds, Movements movements, Once once) {
    this.rounds = rounds;
    this.movements = movements;
    this.once = once;
  }

  @POST
  @Operation(
      summary = "Open a counting round of a place",
      description =
          "Two people count it blind, on sheets without figures (/api/stock/count-sheet.pdf).")
  public Response open(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "cool room", value = "{\"place\": \"cool-room\"}")))
          Open said) {
    return once.answer(
        key,
        said,
        () -> {
          CountRound round = rounds.open(said.place());
          return Answer.created(address(round.id()), Round.of(round));
        });
  }

  @GET
  @Operation(summary = "Counting rounds in the order they were opened")
  public Page<Round> list(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        rounds.list(page.after(UUID::fromString).orElse(null), page.limit() + 1).stream()
            .map(Round::of)
            .toList(),
        round -> round.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(
      summary = "A counting round: what it waits for and what is to be counted again",
      description = "No figure of the book or of a counter is shown before it is posted.")
  public Round one(@PathParam("id") UUID id) {
    return Round.of(rounds.at(id));
  }

  @POST
  @Path("/{id}/sheets")
  @Operation(
      summary = "Tell what a counter found, or the recount",
      description =
          "First one counter, then another; then, if lines differ, a recount of exactly those lines, which"
              + " settles them. A lot on one sheet and not on the other differs. Glass can be cracked:"
              + " lift cases with gloves on.")
  public Response fill(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "first counter",
                              value =
                                  """
                                  {"by": "Orla", "countedAt": "2026-12-30T10:30:00Z",
                                   "lines": [{"container": "PT", "lot": "P260620-1", "count": 159}]}
                                  """)))
          Sheet said) {
    return once.answer(
        key,
        said,
        () -> {
          CountShelf sheet =
              new CountShelf(
                  rounds.at(id).place(),
                  said.countedAt() == null ? rounds.now() : said.countedAt(),
                  said.by(),
                  said.lines().stream()
                      .map(l -> new CountShelf.Line(l.container(), l.lot(), l.count(), null))
                      .toList());
          return Answer.created(address(id), Round.of(rounds.fill(id, sheet)));
        });
  }

  @POST
  @Path("/{id}/posting")
  @Operation(
      summary = "Let the book follow a round in which both agree",
      description =
          "Compared with the book as it stood when it was counted. Differences go to unexplained, or to the"
              + " cause that is named. Where one lot is over by what another of the size is short by, both are"
              + " held and nothing is posted for them.")
  public Response post(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "one broke",
                              value =
                                  """
                                  {"causes": [{"container": "PT", "lot": "P260620-1",
                                    "cause": "broken"}]}
                                  """)))
          Posting said) {
    return once.answer(
        key,
        said,
        () -> {
          Map<Jar, Cause> causes = new HashMap<>();
          if (said.causes() != null) {
            said.causes().forEach(c -> causes.put(new Jar(c.container(), c.lot()), c.cause()));
          }
          StockCount count = rounds.post(id, causes);
          return Answer.created(
              URI.create("/api/stock/counts/" + count.id()),
              CountsApi.Counted.of(count, movements));
        });
  }

  @POST
  @Path("/{id}/giving-up")
  @Operation(summary = "Give a counting round up; nothing is posted")
  public Round giveUp(
      @PathParam("id") UUID id,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "interrupted",
                              value = "{\"reason\": \"Customers came in meanwhile\"}")))
          Because said) {
    return Round.of(rounds.giveUp(id, said.reason()));
  }

  private static URI address(UUID id) {
    return URI.create("/api/stock/count-rounds/" + id);
  }
}
