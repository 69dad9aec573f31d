package org.barreltally.barrels.rest;

import jakarta.transaction.Transactional;
import jakarta.validation.Valid;
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
import jakarta.ws.rs.core.UriBuilder;
import java.time.LocalDate;
import java.util.function.Supplier;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.Barrels;
import org.barreltally.barrels.Emptying;
import org.barreltally.barrels.Reweighing;
import org.barreltally.barrels.ToppingUp;
import org.barreltally.ledger.Days;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Holds;
import org.barreltally.measure.Quantity;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.Answer;
import org.barreltally.web.Because;
import org.barreltally.web.IfMatch;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** One barrel: read, weighed again, topped up, graded, held and released. */
@Path("/api/barrels/{tag}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Barrels")
public class BarrelApi {

  private static final String BODY = "Send the record as JSON.";

  private final Barrels barrels;
  private final Reweighing reweighing;
  private final ToppingUp toppingUp;
  private final Emptying emptying;
  private final Grading grading;
  private final Holds holds;
  private final FarmSettings settings;
  private final Days days;
  private final Once once;

  BarrelApi(
      Barrels barrels,
      Reweighing reweighing,
      ToppingUp toppingUp,
      Emptying emptying,
      Grading grading,
      Holds holds,
      FarmSettings settings,
      Days days,
      Once once) {
    this.barrels = barrels;
    this.reweighing = reweighing;
    this.toppingUp = toppingUp;
    this.emptying = emptying;
    this.grading = grading;
    this.holds = holds;
    this.settings = settings;
    this.days = days;
    this.once = once;
  }

  /** What a weighing found, beside the barrel as it stands after it. */
  public record Weighed(BarrelView barrel, Difference difference) {}

  /** More (or, negative, less) than the book said, as a scale reads in air. */
  public record Difference(Quantity weight, boolean beyondUncertainty) {}

  @GET
  @Operation(
      summary = "A barrel's newest filling",
      description = "The ETag goes into If-Match of a later change.")
  @APIResponse(
      responseCode = "200",
      description = "The barrel",
      content =
          @Content(
              schema = @Schema(implementation = BarrelView.class),
              examples = @ExampleObject(name = "full", value = BarrelExamples.BARREL)))
  public Response at(@PathParam("tag") String tag) {
    return tagged(barrels.at(tag)).build();
  }

  @POST
  @Path("/weighings")
  @Operation(
      summary = "Weigh a barrel again; the newest weighing counts",
      description = "The difference to the book goes to the unexplained, and is judged.")
  @APIResponse(
      responseCode = "201",
      description = "The barrel and the difference",
      content = @Content(schema = @Schema(implementation = Weighed.class)))
  public Response weigh(
      @PathParam("tag") String tag,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "weighed in June",
                              value = BarrelExamples.WEIGHED_AGAIN)))
          BarrelRequests.Reweigh said) {
    return changed(
        tag,
        key,
        ifMatch,
        said,
        () -> {
          Reweighing.Found found = reweighing.weigh(tag, said.on(), said.weighing());
          return new Weighed(
              view(found.barrel()),
              new Difference(
                  BarrelView.pounds(found.barrel(), found.grams()), found.beyondUncertainty()));
        });
  }

  @POST
  @Path("/top-ups")
  @Operation(
      summary = "Top a barrel up; the whole becomes a blend lot",
      description = "Asks for the record that the whole was heated again.")
  @APIResponse(
      responseCode = "201",
      description = "The barrel with its blend lot",
      content = @Content(schema = @Schema(implementation = BarrelView.class)))
  public Response topUp(
      @PathParam("tag") String tag,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "filled up a week later",
                              value = BarrelExamples.TOPPED_UP)))
          ToppingUp.TopUp said) {
    return changed(tag, key, ifMatch, said, () -> view(toppingUp.topUp(tag, said)));
  }

  @POST
  @Path("/write-offs")
  @Operation(summary = "Throw syrup of a barrel away, or draw a sample")
  @APIResponse(
      responseCode = "201",
      description = "The barrel",
      content = @Content(schema = @Schema(implementation = BarrelView.class)))
  public Response writeOff(
      @PathParam("tag") String tag,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "spoiled", value = BarrelExamples.SPOILED)))
          BarrelRequests.WriteOff said) {
    if (Boolean.TRUE.equals(said.all()) == (said.weight() != null)) {
      throw new InvalidField("weight", "Say either all: true, or the weight taken out.");
    }
    return changed(
        tag,
        key,
        ifMatch,
        said,
        () -> view(emptying.takeOut(tag, said.on(), said.weight(), said.cause(), said.reason())));
  }

  @POST
  @Path("/regrade")
  @Transactional
  @Operation(
      summary = "Grade a barrel's lot again",
      description = "An event: what was packed or sold under the earlier grade keeps it.")
  @APIResponse(
      responseCode = "200",
      description = "The barrel",
      content = @Content(schema = @Schema(implementation = BarrelView.class)))
  public Response regrade(
      @PathParam("tag") String tag,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "darkened", value = BarrelExamples.DARKENED)))
          BarrelRequests.Regrade said) {
    unchanged(tag, ifMatch);
    LocalDate on = days.happened(said.on(), "on");
    grading.grade(
        barrels.at(tag).lot().code(), on, said.transmittance(), said.taste(), said.reason());
    return tagged(barrels.at(tag)).build();
  }

  @POST
  @Path("/hold")
  @Transactional
  @Operation(summary = "Hold a barrel: it is not drawn until it is released")
  @APIResponse(
      responseCode = "200",
      description = "The barrel",
      content = @Content(schema = @Schema(implementation = BarrelView.class)))
  public Response hold(
      @PathParam("tag") String tag,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "a sour smell", value = BarrelExamples.HELD)))
          Because said) {
    unchanged(tag, ifMatch);
    holds.hold(barrels.at(tag).lot().code(), said.reason());
    return tagged(barrels.at(tag)).build();
  }

  @POST
  @Path("/release")
  @Transactional
  @Operation(
      summary = "Release a held barrel",
      description = "Refused until it has density, colour and a taste on record.")
  @APIResponse(
      responseCode = "200",
      description = "The barrel",
      content = @Content(schema = @Schema(implementation = BarrelView.class)))
  public Response release(
      @PathParam("tag") String tag,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(name = "tasted again", value = BarrelExamples.RELEASED)))
          Because said) {
    unchanged(tag, ifMatch);
    holds.release(barrels.at(tag).lot().code(), said.reason());
    return tagged(barrels.at(tag)).build();
  }

  private Response changed(
      String tag, String key, String ifMatch, Object said, Supplier<Object> change) {
    return once.answer(
        key,
        said,
        () -> {
          unchanged(tag, ifMatch);
          return Answer.created(UriBuilder.fromPath("/api/barrels/{tag}").build(tag), change.get());
        });
  }

  private void unchanged(String tag, String ifMatch) {
    barrels.unchanged(tag, IfMatch.versions(ifMatch));
  }

  private Response.ResponseBuilder tagged(Barrel barrel) {
    return Response.ok(view(barrel)).tag(barrel.version());
  }

  private BarrelView view(Barrel barrel) {
    return BarrelView.of(barrel, settings);
  }
}
