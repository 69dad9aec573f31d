package org.barreltally.barrels.rest;

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
import jakarta.ws.rs.core.UriBuilder;
import java.util.function.Function;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.Barrels;
import org.barreltally.barrels.Washing;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.Answer;
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

/** Vessels that keep heels, and the washing of any vessel. */
@Path("/api/vessels")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Barrels")
public class VesselsApi {

  private final Barrels barrels;
  private final Washing washing;
  private final FarmSettings settings;
  private final Once once;

  VesselsApi(Barrels barrels, Washing washing, FarmSettings settings, Once once) {
    this.barrels = barrels;
    this.washing = washing;
    this.settings = settings;
    this.once = once;
  }

  @GET
  @Operation(summary = "Vessels that keep heels, by tag")
  @APIResponse(
      responseCode = "200",
      description = "Vessels, and where the list goes on",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one of them",
                      value =
                          BarrelExamples.BARRELS_BEGIN
                              + BarrelExamples.HEEL
                              + BarrelExamples.MORE)))
  public Page<BarrelView> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        barrels.heels(page.after(Function.identity()).orElse(null), page.limit() + 1).stream()
            .map(this::view)
            .toList(),
        BarrelView::tag);
  }

  @GET
  @Path("/{tag}")
  @Operation(summary = "What is, or was last, in a vessel")
  @APIResponse(
      responseCode = "200",
      description = "The vessel",
      content =
          @Content(
              schema = @Schema(implementation = BarrelView.class),
              examples = @ExampleObject(name = "a heel", value = BarrelExamples.HEEL)))
  public BarrelView at(@PathParam("tag") String tag) {
    return view(barrels.at(tag));
  }

  @POST
  @Path("/{tag}/washings")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record that a vessel was emptied and washed",
      description =
          "What was in it before is then no parent of what comes next. Syrup still in it needs a reason to be thrown away.")
  @APIResponse(
      responseCode = "201",
      description = "What was last in it",
      content = @Content(schema = @Schema(implementation = BarrelView.class)))
  public Response wash(
      @PathParam("tag") String tag,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "after the last run",
                              value =
                                  """
                                  {"on": "2026-08-01", "discard": {"reason": "A cup of heel, a month old"}}
                                  """)))
          BarrelRequests.Wash said) {
    return once.answer(
        key,
        said,
        () -> {
          Barrel barrel =
              washing.wash(tag, said.on(), said.discard() == null ? null : said.discard().reason());
          return Answer.created(UriBuilder.fromPath("/api/vessels/{tag}").build(tag), view(barrel));
        });
  }

  private BarrelView view(Barrel barrel) {
    return BarrelView.of(barrel, settings);
  }
}
