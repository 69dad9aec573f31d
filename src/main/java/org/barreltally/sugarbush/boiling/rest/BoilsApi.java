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
import java.util.function.Supplier;
import org.barreltally.sugarbush.boiling.Boil;
import org.barreltally.sugarbush.boiling.BoilNote;
import org.barreltally.sugarbush.boiling.Boiling;
import org.barreltally.sugarbush.boiling.Boils;
import org.barreltally.sugarbush.boiling.DrawOff;
import org.barreltally.sugarbush.boiling.DrawOffTemperatures;
import org.barreltally.sugarbush.boiling.Feed;
import org.barreltally.sugarbush.boiling.StartBoil;
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

/** Boils and their parts. */
@Path("/api/boils")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Sugarhouse")
public class BoilsApi {

  private final Boiling boiling;
  private final Boils boils;
  private final DrawOffTemperatures temperatures;
  private final MaybeOnce maybeOnce;

  BoilsApi(Boiling boiling, Boils boils, DrawOffTemperatures temperatures, MaybeOnce maybeOnce) {
    this.boiling = boiling;
    this.boils = boils;
    this.temperatures = temperatures;
    this.maybeOnce = maybeOnce;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Begin a boil",
      description =
          "What went in by tank or bush, fuel in your own measure, the pressure of the air or at what"
              + " temperature water boiled. What takes more from a tank than stands in it by the log is"
              + " flagged, not refused. The answer says what syrup the sugar makes, beside 86 over the Brix"
              + " and its revision.")
  @APIResponse(
      responseCode = "201",
      description = "The boil",
      content = @Content(schema = @Schema(implementation = BoilView.class)))
  public Response start(
      @HeaderParam("Idempotency-Key") String key, @NotNull(message = SapApi.BODY) StartBoil said) {
    return answer(key, said, () -> boiling.start(said));
  }

  @GET
  @Operation(summary = "Boils, the newest first")
  @APIResponse(responseCode = "200", description = "A part of the list")
  public Page<BoilView> list(
      @QueryParam("season") String season,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        boils
            .list(
                Asked.year(season, "season"),
                page.after(UUID::fromString).orElse(null),
                page.limit() + 1)
            .stream()
            .map(this::view)
            .toList(),
        view -> view.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One boil with its draw-offs and what was expected of it")
  @APIResponse(
      responseCode = "200",
      description = "The boil",
      content = @Content(schema = @Schema(implementation = BoilView.class)))
  public BoilView one(@PathParam("id") UUID id) {
    return view(boils.at(id));
  }

  @POST
  @Path("/{id}/feeds")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Record more sap or concentrate fed to a boil")
  @APIResponse(
      responseCode = "201",
      description = "The boil",
      content = @Content(schema = @Schema(implementation = BoilView.class)))
  public Response feed(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = SapApi.BODY) Feed said) {
    return answer(key, said, () -> boiling.feed(id, said));
  }

  @POST
  @Path("/{id}/draw-offs")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record a draw-off",
      description =
          "By net weight, or by volume with the temperature at which it was read (at most 212 °F: above, the"
              + " density is not known; weigh it). The density with its instrument and temperature. It names"
              + " the tag of the barrel it went to, which need not be entered yet, or says hotIntoJars."
              + " Syrup at draw-off is near 219 °F and clings: gloves, apron, closed shoes.")
  @APIResponse(
      responseCode = "201",
      description = "The boil",
      content = @Content(schema = @Schema(implementation = BoilView.class)))
  public Response drawOff(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = SapApi.BODY) DrawOff said) {
    return answer(key, said, () -> boiling.drawOff(id, said));
  }

  @POST
  @Path("/{id}/notes")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Note the end, fuel, niter or filter press of a boil",
      description =
          "The newest of each counts; none is overwritten. Never open a filter press under pressure.")
  @APIResponse(
      responseCode = "201",
      description = "The boil",
      content = @Content(schema = @Schema(implementation = BoilView.class)))
  public Response note(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = SapApi.BODY) BoilNote said) {
    return answer(key, said, () -> boiling.note(id, said));
  }

  @POST
  @Path("/{id}/reversal")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Take a boil back with all its parts")
  @APIResponse(
      responseCode = "201",
      description = "The boil, taken back",
      content = @Content(schema = @Schema(implementation = BoilView.class)))
  public Response reverse(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = SapApi.BODY) @Valid Because said) {
    return answer(key, said, () -> boiling.reverse(id, said.reason()));
  }

  @POST
  @Path("/{id}/parts/{part}/reversal")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take one feed, draw-off or note of a boil back",
      description =
          "It stays to be read with the reason and counts for nothing; enter what is right anew.")
  @APIResponse(
      responseCode = "201",
      description = "The boil",
      content = @Content(schema = @Schema(implementation = BoilView.class)))
  public Response reversePart(
      @PathParam("id") UUID id,
      @PathParam("part") UUID part,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = SapApi.BODY) @Valid Because said) {
    return answer(key, said, () -> boiling.reversePart(id, part, said.reason()));
  }

  private Response answer(String key, Object said, Supplier<Boil> act) {
    return maybeOnce.answer(
        key,
        said,
        () -> {
          Boil boil = act.get();
          return Answer.created(URI.create("/api/boils/" + boil.id()), view(boil));
        });
  }

  private BoilView view(Boil boil) {
    return BoilView.of(boil, temperatures);
  }
}
