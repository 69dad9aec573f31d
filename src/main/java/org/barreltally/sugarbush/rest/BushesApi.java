package org.barreltally.sugarbush.rest;

import jakarta.validation.constraints.NotNull;
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
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sugarbush.Bush;
import org.barreltally.sugarbush.Bushes;
import org.barreltally.sugarbush.TapCount;
import org.barreltally.web.Answer;
import org.barreltally.web.MaybeOnce;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Bushes: those that are leased, and the maker's own. */
@Path("/api/bushes")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Leases")
public class BushesApi {

  private static final URI HERE = URI.create("/api/bushes");
  private static final String BODY = "Send the record as JSON.";

  private final Bushes bushes;
  private final MaybeOnce maybeOnce;
  private final Days days;

  BushesApi(Bushes bushes, MaybeOnce maybeOnce, Days days) {
    this.bushes = bushes;
    this.maybeOnce = maybeOnce;
    this.days = days;
  }

  /** A bush of one's own. */
  public record OwnBush(String name) {}

  /** Taps counted in one of one's own. */
  public record OwnTaps(Integer season, LocalDate from, Integer count, String note) {}

  /** The bushes of a season. */
  public record OfSeason(int season, List<Bush> items) {}

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Make a bush of one's own known",
      description = "Bushes of leases are known by them.")
  @APIResponse(
      responseCode = "201",
      description = "The bush",
      content = @Content(schema = @Schema(implementation = OwnBush.class)))
  public Response add(
      @HeaderParam("Idempotency-Key") String key, @NotNull(message = BODY) OwnBush said) {
    return maybeOnce.answer(
        key,
        said,
        () -> {
          String name = bushes.add(said.name());
          return Answer.created(HERE, new OwnBush(name));
        });
  }

  @GET
  @Operation(
      summary = "The bushes of a season with their taps",
      description =
          "Leased ones and one's own by name; taps are those set by the newest counts, or where none were"
              + " counted those agreed. Without a season, this year's.")
  @APIResponse(
      responseCode = "200",
      description = "The bushes",
      content = @Content(schema = @Schema(implementation = OfSeason.class)))
  public OfSeason list(@QueryParam("season") String season) {
    if (season != null && !season.matches("(19|20|21)[0-9]{2}")) {
      throw new InvalidField("season", "Give the year of the sap, for example 2026.");
    }
    int year = season == null ? days.today().getYear() : Integer.parseInt(season);
    return new OfSeason(year, List.copyOf(bushes.of(year)));
  }

  @POST
  @Path("/{name}/taps")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record a count of taps in a bush of one's own",
      description =
          "From a day on; of a season the newest counts. Leased trees are counted with the lease.")
  @APIResponse(
      responseCode = "201",
      description = "The bush that season",
      content = @Content(schema = @Schema(implementation = Bush.class)))
  public Response count(
      @PathParam("name") String name,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY) OwnTaps said) {
    return maybeOnce.answer(
        key,
        said,
        () -> {
          TapCount taps = new TapCount(said.from(), said.count(), null, said.note());
          return Answer.created(HERE, bushes.count(name, said.season(), taps));
        });
  }
}
