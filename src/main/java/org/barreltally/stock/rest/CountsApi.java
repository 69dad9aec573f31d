package org.barreltally.stock.rest;

import jakarta.validation.Valid;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Movements;
import org.barreltally.ledger.PostedMovement;
import org.barreltally.stock.Cause;
import org.barreltally.stock.CountShelf;
import org.barreltally.stock.Counting;
import org.barreltally.stock.StockCount;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Counts of shelves. */
@Path("/api/stock/counts")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Stock")
public class CountsApi {

  /**
   * What a count came to. Who counted is left out: answers are kept for repeats.
   *
   * @param bookYear the year the differences are booked in; null if nothing was posted
   * @param late whether the count was of a year that is closed, so that they are booked in an open
   *     one; null if nothing was posted
   */
  public record Counted(
      UUID id,
      String place,
      Instant countedAt,
      UUID movement,
      Integer bookYear,
      Boolean late,
      List<Line> differences) {

    static Counted of(StockCount count, Movements movements) {
      Optional<PostedMovement> posted = Optional.ofNullable(count.movement()).map(movements::at);
      return new Counted(
          count.id(),
          count.place(),
          count.countedAt(),
          count.movement(),
          posted.map(PostedMovement::bookYear).orElse(null),
          posted.map(PostedMovement::late).orElse(null),
          lines(count.differences()));
    }
  }

  /**
   * A line of a count, in pieces.
   *
   * @param suspectedSwap the lot it was mixed up with
   * @param cause what became of jars that are short; null if nobody said
   * @param neverThere true where the lot had never stood at that place by the book; else null
   */
  public record Line(
      String container,
      String lot,
      long book,
      long counted,
      String suspectedSwap,
      Cause cause,
      Boolean neverThere) {

    static Line of(StockCount.Line line) {
      return new Line(
          line.container(),
          line.lot(),
          line.book(),
          line.counted(),
          line.suspectedSwap(),
          line.cause(),
          line.neverThere() ? true : null);
    }
  }

  /** A count as it was kept, with every line. */
  public record KeptCount(
      UUID id, String place, Instant countedAt, String by, UUID movement, List<Line> lines) {}

  private final Counting counting;
  private final Movements movements;
  private final Once once;

  CountsApi(Counting counting, Movements movements, Once once) {
    this.counting = counting;
    this.movements = movements;
    this.once = once;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Count a shelf; the book follows",
      description =
          "Only lots in the lines are compared. Where, of one size, one lot is over by exactly what"
              + " another is short by, the labels were probably mixed up: both lots are held and"
              + " these two differences are not posted. If it was no mix-up after all, count each"
              + " lot by itself.")
  @APIResponse(
      responseCode = "201",
      description = "What was off",
      content =
          @Content(
              schema = @Schema(implementation = Counted.class),
              examples =
                  @ExampleObject(
                      name = "one pint short",
                      value =
                          """
                          {"id": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "place": "cool-room",
                           "countedAt": "2026-07-01T16:30:00Z",
                           "movement": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3e",
                           "differences": [{"container": "PT", "lot": "P260620-1",
                            "book": 160, "counted": 159}]}
                          """)))
  public Response count(
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "one shelf",
                              value =
                                  """
                                  {"place": "cool-room", "countedAt": "2026-07-01T16:30:00Z",
                                   "by": "Orla", "lines": [
                                     {"container": "PT", "lot": "P260620-1", "count": 159},
                                     {"container": "HP", "lot": "P260620-1", "count": 320}]}
                                  """)))
          CountShelf said) {
    return once.answer(
        key,
        said,
        () -> {
          StockCount count = counting.count(said);
          return Answer.created(
              URI.create("/api/stock/counts/" + count.id()), Counted.of(count, movements));
        });
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One count with every line, by size and lot")
  public KeptCount one(@PathParam("id") UUID id) {
    StockCount count = counting.at(id);
    return new KeptCount(
        count.id(),
        count.place(),
        count.countedAt(),
        count.by(),
        count.movement(),
        lines(count.lines()));
  }

  private static List<Line> lines(List<StockCount.Line> lines) {
    return lines.stream().map(Line::of).toList();
  }
}
