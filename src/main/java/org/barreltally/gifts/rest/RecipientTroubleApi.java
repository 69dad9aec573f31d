package org.barreltally.gifts.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.GiftOrdering;
import org.barreltally.gifts.Inspected;
import org.barreltally.gifts.Person;
import org.barreltally.gifts.Replacing;
import org.barreltally.gifts.Returning;
import org.barreltally.web.MayBeEmpty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What goes wrong with a recipient's boxes, and how it is put right. */
@Path("/api/gift-orders/{id}/recipients/{n}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class RecipientTroubleApi {

  /** A parcel came back; {@code inspected} where it was looked at on the spot. */
  public record CameBack(LocalDate on, String reason, Inspected inspected) {}

  /** A returned parcel was looked at. */
  public record LookedAt(LocalDate on, List<Inspected.Line> lines, Boolean keep) {}

  private static final String FOUND =
      """
      {"on": "2026-12-15", "keep": true,
       "lines": [{"container": "HP", "lot": "P260620-1", "good": 1, "broken": 0},
                 {"container": "HP", "lot": "P260620-2", "good": 1, "broken": 0}]}
      """;

  private final Returning returning;
  private final Replacing replacing;
  private final GiftOrdering ordering;
  private final RecipientAnswer answer;

  RecipientTroubleApi(
      Returning returning, Replacing replacing, GiftOrdering ordering, RecipientAnswer answer) {
    this.returning = returning;
    this.replacing = replacing;
    this.ordering = ordering;
    this.answer = answer;
  }

  @POST
  @Path("/return")
  @Operation(
      summary = "A parcel came back",
      description =
          "Its jars can be neither promised nor sold until somebody has looked at them: see"
              + " inspect, or send inspected along.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response takeBack(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @MayBeEmpty
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "bad address",
                              value = "{\"on\": \"2026-12-15\", \"reason\": \"No such street\"}")))
          CameBack said) {
    CameBack back = said == null ? new CameBack(null, null, null) : said;
    return answer.after(
        id,
        n,
        key,
        ifMatch,
        said,
        versions -> {
          returning.takeBack(id, versions, n, back.on(), back.reason());
          if (back.inspected() != null) {
            returning.inspect(id, null, n, back.on(), back.inspected());
          }
        });
  }

  @POST
  @Path("/inspect")
  @Operation(
      summary = "A returned parcel was looked at: good jars wait to be sent again or go to stock",
      description =
          "Every lot and size that was in it, good and broken. keep false puts the good ones to"
              + " stock in the cool room. Doubtful jars (loose caps, leaks, heat, frost) are not"
              + " good: hold or discard them; your inspector decides where you doubt.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response inspect(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(content = @Content(examples = @ExampleObject(name = "whole", value = FOUND)))
          LookedAt said) {
    return answer.after(
        id,
        n,
        key,
        ifMatch,
        said,
        versions ->
            returning.inspect(
                id, versions, n, said.on(), new Inspected(said.lines(), said.keep())));
  }

  @POST
  @Path("/replace")
  @Operation(
      summary = "Replace broken jars at the maker's own cost",
      description =
          "Broken in the post (after sending): a further mailing. Broken at packing: from the"
              + " shelf. Broken glass cuts; clear what lay beside it too.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response replace(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "broken in post",
                              value =
                                  """
                                  {"on": "2026-12-18", "reason": "Broken in post",
                                   "lines": [{"container": "HP", "lot": "P260620-2", "count": 1}],
                                   "postage": {"amount": 12.50, "currency": "USD"}}
                                  """)))
          Replacing.What said) {
    return answer.after(
        id, n, key, ifMatch, said, versions -> replacing.replace(id, versions, n, said));
  }

  @POST
  @Path("/correction")
  @Operation(
      summary = "Correct a recipient's name, address or card text",
      description = "What is left out stays. The old words are not kept.")
  @APIResponse(
      responseCode = "200",
      description = "The recipient without name and address",
      content = @Content(schema = @Schema(implementation = OrderView.RecipientView.class)))
  public Response correct(
      @PathParam("id") UUID id,
      @PathParam("n") int n,
      @HeaderParam("Idempotency-Key") String key,
      @HeaderParam("If-Match") String ifMatch,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "right street",
                              value =
                                  """
                                  {"address": {"lines": ["14 Tarn Lane"], "town": "Fernby", "region": "VT",
                                               "postcode": "05999", "country": "US"}}
                                  """)))
          Person said) {
    return answer.after(
        id, n, key, ifMatch, said, versions -> ordering.correct(id, versions, n, said));
  }
}
