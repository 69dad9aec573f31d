package org.barreltally.barrels.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.NoSuchElementException;
import java.util.function.Function;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.Barrels;
import org.barreltally.barrels.FillBarrel;
import org.barreltally.barrels.Filling;
import org.barreltally.barrels.Origin;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
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

/** Barrels: filled and listed. */
@Path("/api/barrels")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Barrels")
public class BarrelsApi {

  private static final String BODY = "Send the record as JSON.";

  private final Barrels barrels;
  private final Filling filling;
  private final FarmSettings settings;
  private final Once once;

  BarrelsApi(Barrels barrels, Filling filling, FarmSettings settings, Once once) {
    this.barrels = barrels;
    this.filling = filling;
    this.settings = settings;
    this.once = once;
  }

  @POST
  @Operation(
      summary = "Record a filled barrel and open its lot",
      description =
          "Weighed, dipped, or both: then the weight counts and the gap is judged. Without"
              + " transmittance and taste the barrel is held until it is graded.")
  @APIResponse(
      responseCode = "201",
      description = "The barrel",
      content = @Content(schema = @Schema(implementation = BarrelView.class)))
  public Response fill(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "weighed and dipped",
                              value = BarrelExamples.WEIGHED_AND_DIPPED)))
          FillBarrel said) {
    return once.answer(
        key,
        said,
        () -> {
          Barrel barrel = filling.fill(said, Origin.BOILED);
          return Answer.created(URI.create("/api/barrels/" + barrel.tag()), view(barrel));
        });
  }

  @GET
  @Operation(
      summary = "Barrels by tag, each with its newest filling",
      description = "Filters: grade, state (full, opened, drained), season.")
  @APIResponse(
      responseCode = "200",
      description = "Barrels, and where the list goes on",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one of them",
                      value =
                          BarrelExamples.BARRELS_BEGIN
                              + BarrelExamples.BARREL
                              + BarrelExamples.MORE)))
  public Page<BarrelView> list(
      @QueryParam("grade") String grade,
      @QueryParam("state") String state,
      @QueryParam("season") String season,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    Barrels.Filter filter =
        new Barrels.Filter(
            grade == null ? null : ColorClass.of(grade),
            state == null ? null : state(state),
            Asked.year(season, "season"));
    return page.page(
        barrels
            .list(filter, page.after(Function.identity()).orElse(null), page.limit() + 1)
            .stream()
            .map(this::view)
            .toList(),
        BarrelView::tag);
  }

  private BarrelView view(Barrel barrel) {
    return BarrelView.of(barrel, settings);
  }

  private static BarrelState state(String code) {
    try {
      return BarrelState.of(code);
    } catch (NoSuchElementException e) {
      throw new InvalidField("state", "Give one of full, opened, drained.");
    }
  }
}
