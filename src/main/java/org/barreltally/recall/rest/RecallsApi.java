package org.barreltally.recall.rest;

import jakarta.annotation.security.RolesAllowed;
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
import java.time.Instant;
import java.util.UUID;
import org.barreltally.recall.Finding;
import org.barreltally.recall.Recall;
import org.barreltally.recall.Recalling;
import org.barreltally.recall.StartRecall;
import org.barreltally.web.Because;
import org.barreltally.web.Once;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.barreltally.web.ReadAnew;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Recalls and their rehearsals. */
@Path("/api/recalls")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Recalls")
public class RecallsApi {

  /** A recall in the list. */
  public record Listed(
      UUID id,
      String lot,
      String barrel,
      String reason,
      String state,
      int lots,
      Instant startedAt) {
    static Listed of(Recall recall) {
      return new Listed(
          recall.id(),
          recall.lot(),
          recall.barrel(),
          recall.reason(),
          recall.state(),
          recall.touched().size(),
          recall.startedAt());
    }
  }

  private final Recalling recalling;
  private final Finding finding;
  private final Once once;

  RecallsApi(Recalling recalling, Finding finding, Once once) {
    this.recalling = recalling;
    this.finding = finding;
    this.once = once;
  }

  @POST
  @Operation(
      summary = "Call a lot back, or rehearse it",
      description =
          "Finds everything made with syrup of the lot and its share, what is on hand at every place, who"
              + " has the rest by name, and how much the public has. Everything touched is held at once and"
              + " cannot be released while the recall is open. A rehearsal holds nothing. Name the lot or a"
              + " barrel. A repeat with the same key names the same recall, read as it stands then. Your"
              + " food inspector and state agency decide what a recall takes.")
  @APIResponse(
      responseCode = "201",
      description = "What was found",
      content =
          @Content(
              schema = @Schema(implementation = RecallView.class),
              examples = @ExampleObject(name = "a heel in pints", value = RecallExamples.RECALL)))
  public Response start(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "a rehearsal",
                              value =
                                  """
                                  {"lot": "S26-003", "reason": "Scorched taste in two jars",
                                   "rehearsal": true}
                                  """)))
          StartRecall said) {
    Response kept =
        once.answer(
            key,
            said,
            () -> {
              Recall recall = recalling.start(said);
              return ReadAnew.kept(URI.create("/api/recalls/" + recall.id()));
            });
    return ReadAnew.answer(kept, at -> one(UUID.fromString(ReadAnew.identity(at))));
  }

  @GET
  @Operation(summary = "Recalls and rehearsals in the order they began")
  public Page<Listed> list(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        recalling.list(page.after(UUID::fromString).orElse(null), page.limit() + 1).stream()
            .map(Listed::of)
            .toList(),
        recall -> recall.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(
      summary = "A recall with what is left of it now",
      description = "Read anew each time: what came back or was found since is in it.")
  @APIResponse(
      responseCode = "200",
      description = "The recall",
      content =
          @Content(
              schema = @Schema(implementation = RecallView.class),
              examples = @ExampleObject(name = "a heel in pints", value = RecallExamples.RECALL)))
  public RecallView one(@PathParam("id") UUID id) {
    return RecallView.of(finding.of(id));
  }

  @POST
  @Path("/{id}/end")
  @RolesAllowed("owner")
  @Operation(
      summary = "End a recall",
      description = "Its lots stay held; each is released by itself, with a reason.")
  @APIResponse(
      responseCode = "200",
      description = "The recall",
      content = @Content(schema = @Schema(implementation = RecallView.class)))
  public RecallView end(
      @PathParam("id") UUID id,
      @NotNull(message = "Send the record as JSON.")
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "all found",
                              value = "{\"reason\": \"All jars back or destroyed\"}")))
          Because said) {
    recalling.end(id, said.reason());
    return RecallView.of(finding.of(id));
  }
}
