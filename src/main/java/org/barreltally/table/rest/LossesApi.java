package org.barreltally.table.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.barreltally.table.Loss;
import org.barreltally.table.Losses;
import org.barreltally.table.TellLoss;
import org.barreltally.web.Answer;
import org.barreltally.web.Because;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Jars broken, opened to taste or given away at a show's table. */
@Path("/api/shows/{id}/losses")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Show table")
public class LossesApi {

  private final Losses losses;
  private final Once once;

  LossesApi(Losses losses, Once once) {
    this.losses = losses;
    this.once = once;
  }

  @POST
  @Operation(
      summary = "Note jars broken, opened to taste or given away at a table",
      description =
          "It happened, so no count is too high; a lot that the book does not know is booked without"
              + " one. What is given away needs a reason. Broken glass: look over the jars that stood"
              + " beside it before they are sold.")
  @APIResponse(
      responseCode = "201",
      description = "As the book has it",
      content = @Content(schema = @Schema(implementation = Loss.class)))
  public Response tell(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send what left the table as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "one dropped",
                              value =
                                  """
                                  {"at": "2026-10-03T14:05:00Z", "container": "PT",
                                   "grade": "amber", "count": 1, "cause": "broken"}
                                  """)))
          TellLoss said) {
    return once.answer(
        key,
        said,
        () -> {
          Loss loss = losses.tell(id, said);
          return Answer.created(URI.create("/api/movements/" + loss.id()), loss);
        });
  }

  /** What was taken back. */
  public record TakenBack(UUID id, UUID show) {}

  @POST
  @Path("/{loss}/reversal")
  @Operation(summary = "Take such a note back; again, it changes nothing")
  @APIResponse(
      responseCode = "200",
      description = "What was taken back",
      content = @Content(schema = @Schema(implementation = TakenBack.class)))
  public Response takeBack(
      @PathParam("id") UUID id,
      @PathParam("loss") UUID loss,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the reason as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "slip of the thumb",
                              value = "{\"reason\": \"It was not broken\"}")))
          Because said) {
    return once.answer(
        key,
        said,
        () -> {
          losses.takeBack(id, loss, said.reason());
          return Answer.ok(new TakenBack(loss, id));
        });
  }
}
