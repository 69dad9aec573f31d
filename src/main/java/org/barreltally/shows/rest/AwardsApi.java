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
import java.util.UUID;
import org.barreltally.shows.Award;
import org.barreltally.shows.Awards;
import org.barreltally.shows.EnterAward;
import org.barreltally.shows.Shows;
import org.barreltally.web.Answer;
import org.barreltally.web.IfMatch;
import org.barreltally.web.MaybeOnce;
import org.barreltally.web.Page;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Classes entered at a show, and how they were judged. */
@Path("/api/shows")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Shows")
public class AwardsApi {

  private static final String JUDGED =
      """
      {"class": "Amber, single jug", "lot": "P260620-1", "container": "PT", "score": 97.5,
       "ribbon": "Blue ribbon"}
      """;

  private final Awards awards;
  private final Shows shows;
  private final MaybeOnce maybeOnce;

  AwardsApi(Awards awards, Shows shows, MaybeOnce maybeOnce) {
    this.awards = awards;
    this.shows = shows;
    this.maybeOnce = maybeOnce;
  }

  @GET
  @Path("/{id}/awards")
  @Operation(
      summary = "The classes entered at a show, with score and ribbon where they were judged")
  @APIResponse(
      responseCode = "200",
      description = "By class and lot",
      content =
          @Content(
              examples = @ExampleObject(name = "judged", value = "{\"items\": [" + JUDGED + "]}")))
  public Page<Award> list(@PathParam("id") UUID id) {
    return new Page<>(awards.ofShow(shows.at(id).id()), null);
  }

  @POST
  @Path("/{id}/awards")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Note a class entered at a show, or how it was judged",
      description =
          "Said again for the same class, lot and size, the newest holds. It shows on the lot, with"
              + " words that its label or price card may carry.")
  @APIResponse(
      responseCode = "201",
      description = "The award",
      content = @Content(schema = @Schema(implementation = Award.class)))
  public Response enter(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content = @Content(examples = @ExampleObject(name = "judged", value = JUDGED)))
          EnterAward said) {
    return maybeOnce.answer(
        key,
        said,
        () ->
            Answer.created(
                URI.create("/api/shows/" + id + "/awards"),
                awards.enter(id, IfMatch.versions(ifMatch), said)));
  }
}
