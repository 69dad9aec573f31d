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
import org.barreltally.sugarbush.boiling.Concentrate;
import org.barreltally.sugarbush.boiling.Concentrates;
import org.barreltally.sugarbush.boiling.MakeConcentrate;
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

/** Concentrate made of sap. */
@Path("/api/concentrates")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Sugarhouse")
public class ConcentratesApi {

  private final Concentrates concentrates;
  private final MaybeOnce maybeOnce;

  ConcentratesApi(Concentrates concentrates, MaybeOnce maybeOnce) {
    this.concentrates = concentrates;
    this.maybeOnce = maybeOnce;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record concentrate that a membrane made",
      description =
          "Volume and Brix in and out, by tank, and the permeate's Brix if it was read. Sugar that did not come out is"
              + " named and judged against the readings' uncertainty, never refused. Wash water and cleaners"
              + " of a membrane burn and spoil sap: rinse as its maker says.")
  @APIResponse(
      responseCode = "201",
      description = "The concentrate",
      content = @Content(schema = @Schema(implementation = ConcentrateView.class)))
  public Response make(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = SapApi.BODY) MakeConcentrate said) {
    return maybeOnce.answer(key, said, () -> created(concentrates.make(said)));
  }

  @GET
  @Operation(summary = "Concentrate made, the newest first")
  @APIResponse(responseCode = "200", description = "A part of the list")
  public Page<ConcentrateView> list(
      @QueryParam("season") String season,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        concentrates
            .list(
                Asked.year(season, "season"),
                page.after(UUID::fromString).orElse(null),
                page.limit() + 1)
            .stream()
            .map(ConcentrateView::of)
            .toList(),
        view -> view.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One making of concentrate")
  @APIResponse(
      responseCode = "200",
      description = "The concentrate",
      content = @Content(schema = @Schema(implementation = ConcentrateView.class)))
  public ConcentrateView one(@PathParam("id") UUID id) {
    return ConcentrateView.of(concentrates.at(id));
  }

  @POST
  @Path("/{id}/reversal")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take a making of concentrate back",
      description =
          "It stays to be read with the reason and counts for nothing; enter what is right anew.")
  @APIResponse(
      responseCode = "201",
      description = "The concentrate, taken back",
      content = @Content(schema = @Schema(implementation = ConcentrateView.class)))
  public Response reverse(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = SapApi.BODY) @Valid Because said) {
    return maybeOnce.answer(key, said, () -> created(concentrates.reverse(id, said.reason())));
  }

  private static Answer created(Concentrate made) {
    return Answer.created(URI.create("/api/concentrates/" + made.id()), ConcentrateView.of(made));
  }
}
