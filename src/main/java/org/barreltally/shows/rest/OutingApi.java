package org.barreltally.shows.rest;

import jakarta.validation.constraints.NotNull;
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
import java.util.List;
import java.util.UUID;
import org.barreltally.shows.CameBack;
import org.barreltally.shows.ComeBack;
import org.barreltally.shows.CountingBack;
import org.barreltally.shows.PackOut;
import org.barreltally.shows.PackedOut;
import org.barreltally.shows.PackingOut;
import org.barreltally.shows.Shows;
import org.barreltally.shows.TableBook;
import org.barreltally.shows.TableLine;
import org.barreltally.shows.TableTransfers;
import org.barreltally.shows.TransferJars;
import org.barreltally.shows.Transferred;
import org.barreltally.web.Answer;
import org.barreltally.web.IfMatch;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Jars out to a table, between tables, and home. */
@Path("/api/shows")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Shows")
public class OutingApi {

  private final PackingOut packing;
  private final TableTransfers transfers;
  private final CountingBack counting;
  private final TableBook tables;
  private final Shows shows;
  private final Once once;

  OutingApi(
      PackingOut packing,
      TableTransfers transfers,
      CountingBack counting,
      TableBook tables,
      Shows shows,
      Once once) {
    this.packing = packing;
    this.transfers = transfers;
    this.counting = counting;
    this.tables = tables;
    this.shows = shows;
    this.once = once;
  }

  /** What the ledger tells of a table. */
  public record Table(UUID show, String place, List<TableLine> items) {}

  @GET
  @Path("/{id}/table")
  @Operation(
      summary = "What came to a show's table and left it, by container and lot",
      description = "Pieces. onTable is all of it added up; below zero it needs a count.")
  @APIResponse(
      responseCode = "200",
      description = "The table by the ledger",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "counted home",
                      value =
                          """
                          {"show": "01a0c0de-7000-7000-8000-000000000001",
                           "place": "fernby-harvest-fair-2026", "items": [
                            {"container": "PT", "lot": "P260620-1", "grade": "amber", "packedOut": 60,
                             "received": 0, "given": 12, "back": 14, "broken": 1, "sampled": 0,
                             "sold": 33, "otherwise": 0, "onTable": 0}]}
                          """)))
  public Table table(@PathParam("id") UUID id) {
    var show = shows.at(id);
    return new Table(id, show.place(), tables.of(show));
  }

  @POST
  @Path("/{id}/pack-out")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Pack jars out to a show, by lot",
      description =
          "From the cool room, or the room named in from; to a show that is accepted, paid, packed or"
              + " running. What is reserved for the show is used up first; held lots and jars promised"
              + " to others stay. Several pack-outs and their change money add up.")
  @APIResponse(
      responseCode = "201",
      description = "What went out",
      content = @Content(schema = @Schema(implementation = PackedOut.class)))
  public Response packOut(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "two lots", value = ShowExamples.PACK_OUT)))
          PackOut said) {
    return once.answer(
        key,
        said,
        () -> {
          PackedOut out = packing.packOut(id, IfMatch.versions(ifMatch), said);
          return Answer.created(movement(out.movement()), out);
        });
  }

  @POST
  @Path("/{id}/transfers")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Note jars that went to another table of the same day",
      description =
          "Both tables show it. Without a lot it is the only lot of that container on the table;"
              + " where there are more, the counts tell later.")
  @APIResponse(
      responseCode = "201",
      description = "What went over",
      content = @Content(schema = @Schema(implementation = Transferred.class)))
  public Response transfer(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "a dozen", value = ShowExamples.TRANSFER)))
          TransferJars said) {
    return once.answer(
        key,
        said,
        () -> {
          Transferred over = transfers.transfer(id, IfMatch.versions(ifMatch), said);
          return Answer.created(movement(over.movement()), over);
        });
  }

  @POST
  @Path("/{id}/back")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Count jars home by lot, and the drawer by notes and coins",
      description =
          "A count is a fact: a lot that was never packed out and a drawer that does not add up are"
              + " taken, and listed in toLookAt. Several counts add up; of each drawer the newest"
              + " holds. The first count closes the show, unless closes is false. Broken glass: look"
              + " over the jars that stood beside it before they are sold.")
  @APIResponse(
      responseCode = "201",
      description = "The count as it is kept",
      content = @Content(schema = @Schema(implementation = CameBack.class)))
  public Response back(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "counted", value = ShowExamples.BACK)))
          ComeBack said) {
    return once.answer(
        key,
        said,
        () -> {
          CameBack home = counting.back(id, IfMatch.versions(ifMatch), said);
          URI at =
              home.movement() == null ? URI.create("/api/shows/" + id) : movement(home.movement());
          return Answer.created(at, home);
        });
  }

  private static URI movement(UUID id) {
    return URI.create("/api/movements/" + id);
  }
}
