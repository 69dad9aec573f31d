package org.barreltally.sugarbush.boiling.rest;

import jakarta.validation.Valid;
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
import java.util.UUID;
import org.barreltally.sugarbush.boiling.GatherSap;
import org.barreltally.sugarbush.boiling.SapGathered;
import org.barreltally.sugarbush.boiling.SapLog;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
import org.barreltally.web.Because;
import org.barreltally.web.MaybeOnce;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Sap gathered. */
@Path("/api/sap")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Sugarhouse")
public class SapApi {

  static final String BODY = "Send the record as JSON.";

  private final SapLog sap;
  private final MaybeOnce maybeOnce;

  SapApi(SapLog sap, MaybeOnce maybeOnce) {
    this.sap = sap;
    this.maybeOnce = maybeOnce;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record sap that was gathered",
      description =
          "By bush and tank, with the gauge's volume, its temperature and the Brix. The bush is one that is"
              + " leased for the season or one of your own. The answer adds the volume at 68 °F and the sugar,"
              + " with standard uncertainties by the sugarhouse's settings.")
  @APIResponse(
      responseCode = "201",
      description = "The sap",
      content = @Content(schema = @Schema(implementation = SapView.class)))
  public Response gather(
      @HeaderParam("Idempotency-Key") String key, @NotNull(message = BODY) GatherSap said) {
    return maybeOnce.answer(key, said, () -> created(sap.gather(said)));
  }

  @GET
  @Operation(summary = "Sap gathered, the newest first")
  @APIResponse(responseCode = "200", description = "A part of the list")
  public Page<SapView> list(
      @QueryParam("season") String season,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        sap
            .list(
                Asked.year(season, "season"),
                page.after(UUID::fromString).orElse(null),
                page.limit() + 1)
            .stream()
            .map(SapView::of)
            .toList(),
        view -> view.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One gathering of sap")
  @APIResponse(
      responseCode = "200",
      description = "The sap",
      content = @Content(schema = @Schema(implementation = SapView.class)))
  public SapView one(@PathParam("id") UUID id) {
    return SapView.of(sap.at(id));
  }

  @POST
  @Path("/{id}/reversal")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take a gathering back",
      description =
          "It stays to be read with the reason and counts for nothing; enter what is right anew.")
  @APIResponse(
      responseCode = "201",
      description = "The sap, taken back",
      content = @Content(schema = @Schema(implementation = SapView.class)))
  public Response reverse(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY) @Valid Because said) {
    return maybeOnce.answer(key, said, () -> created(sap.reverse(id, said.reason())));
  }

  private static Answer created(SapGathered gathered) {
    return Answer.created(URI.create("/api/sap/" + gathered.id()), SapView.of(gathered));
  }
}
