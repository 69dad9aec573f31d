package org.barreltally.shares.rest;

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
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.shares.HandOver;
import org.barreltally.shares.HandedOver;
import org.barreltally.shares.HandingOver;
import org.barreltally.shares.Statements;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
import org.barreltally.web.MayBeEmpty;
import org.barreltally.web.Once;
import org.barreltally.web.ReadAnew;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What landowners are handed, their statements, and the season's close. */
@Path("/api/leases/{id}")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Leases")
public class SharesApi {

  private static final String BODY = "Send the record as JSON.";

  private final HandingOver handing;
  private final Statements statements;
  private final Once once;

  SharesApi(HandingOver handing, Statements statements, Once once) {
    this.handing = handing;
    this.statements = statements;
    this.once = once;
  }

  /** The day of the season's close; null for today. */
  public record Close(LocalDate on) {}

  @POST
  @Path("/deliveries")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Hand jars to a landowner",
      description =
          "All lines or none, in any sizes; only jars that nobody was promised, of lots that are not held."
              + " More than is owed may go; it is carried on below zero. To take a hand-over back, reverse"
              + " its movement.")
  @APIResponse(
      responseCode = "201",
      description = "What was handed over",
      content =
          @Content(
              schema = @Schema(implementation = HandedOver.class),
              examples = @ExampleObject(name = "example", value = ShareExamples.HANDED)))
  public Response handOver(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "example", value = ShareExamples.HAND_OVER)))
          HandOver said) {
    return once.answer(key, said, () -> Answer.created(statement(id), handing.handOver(id, said)));
  }

  @POST
  @Path("/close")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Close a lease at the season's end",
      description =
          "No more is handed over or counted for it. What is left, above or below zero, goes on to the next"
              + " lease of the same trees, once.")
  @APIResponse(
      responseCode = "201",
      description = "The last statement",
      content =
          @Content(
              schema = @Schema(implementation = StatementView.class),
              examples = @ExampleObject(name = "example", value = ShareExamples.STATEMENT)))
  public Response close(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @MayBeEmpty
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "example", value = ShareExamples.CLOSE)))
          Close said) {
    Response kept =
        once.answer(
            key,
            said,
            () -> {
              statements.close(id, said.on());
              return ReadAnew.kept(statement(id));
            });
    return ReadAnew.answer(kept, at -> StatementView.of(statements.of(id, null)));
  }

  @GET
  @Path("/statement")
  @Operation(
      summary = "What a landowner is owed, got, and what is carried on",
      description =
          "season asks for the lease of the same trees for another season. Barter is income at fair market"
              + " value: both sides' values stand here, and the preparer decides.")
  @APIResponse(
      responseCode = "200",
      description = "The statement",
      content =
          @Content(
              schema = @Schema(implementation = StatementView.class),
              examples = @ExampleObject(name = "example", value = ShareExamples.STATEMENT)))
  public StatementView statement(@PathParam("id") UUID id, @QueryParam("season") String season) {
    return StatementView.of(statements.of(id, Asked.year(season, "season")));
  }

  private static URI statement(UUID id) {
    return URI.create("/api/leases/" + id + "/statement");
  }
}
