package org.barreltally.supplies.rest;

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
import java.net.URI;
import java.time.LocalDate;
import java.util.function.Function;
import java.util.function.Supplier;
import org.barreltally.supplies.Supplies;
import org.barreltally.supplies.Supply;
import org.barreltally.supplies.SupplyMovement;
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

/** What packing uses up: jars, caps, labels, cartons. */
@Path("/api/supplies")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Supplies")
public class SuppliesApi {

  private static final String BODY = "Send the record as JSON.";

  private final Supplies supplies;
  private final Once once;

  SuppliesApi(Supplies supplies, Once once) {
    this.supplies = supplies;
    this.once = once;
  }

  /** Some came. */
  public record Receipt(LocalDate on, Long count, String note) {}

  /** It was counted. */
  public record Count(LocalDate on, Long count) {}

  @GET
  @Operation(
      summary = "Supplies by code, with what is on hand",
      description =
          "State not-counted-yet: it was never received or counted, and runs only warn. State"
              + " count-needed: runs used more than the book had.")
  public Page<SupplyView> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        supplies.list(page.after(Function.identity()).orElse(null), page.limit() + 1).stream()
            .map(SupplyView::of)
            .toList(),
        SupplyView::code);
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One supply with what is on hand")
  @APIResponse(
      responseCode = "200",
      description = "The supply",
      content =
          @Content(
              schema = @Schema(implementation = SupplyView.class),
              examples =
                  @ExampleObject(
                      name = "caps run low",
                      value =
                          """
                          {"code": "CAP-38", "name": "Caps, 38 mm", "kind": "cap", "container": "PT", "perJar": 1,
                           "lowLine": 200, "onHand": 180, "state": "counted", "low": true}
                          """)))
  public SupplyView one(@PathParam("code") String code) {
    return SupplyView.of(supplies.at(code));
  }

  @GET
  @Path("/{code}/movements")
  @Operation(
      summary = "What happened to a supply, in order",
      description =
          "A change of nothing beside pieces: a count of a later day had them in already.")
  public Page<SupplyMovement> movements(
      @PathParam("code") String code,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        supplies.history(code, page.after(Long::valueOf).orElse(0L), page.limit() + 1),
        movement -> Long.toString(movement.seq()));
  }

  @POST
  @Operation(
      summary = "Add a supply",
      description =
          "With perJar, or jarsEach for a carton, canning runs use it up: for jars of its container,"
              + " or of any size where none is named. With a container alone it is one per jar.")
  @APIResponse(
      responseCode = "201",
      description = "Added; not counted yet",
      content = @Content(schema = @Schema(implementation = SupplyView.class)))
  public Response add(
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = {
                        @ExampleObject(
                            name = "caps of one size",
                            value =
                                """
                                {"code": "CAP-38", "name": "Caps, 38 mm", "kind": "cap",
                                 "container": "PT", "perJar": 1, "lowLine": 200}
                                """),
                        @ExampleObject(
                            name = "cartons of twelve",
                            value =
                                """
                                {"code": "CARTON-PT", "name": "Cartons, twelve pints",
                                 "kind": "carton", "container": "PT", "jarsEach": 12}
                                """)
                      }))
          Supply said) {
    SupplyView added = SupplyView.of(supplies.add(said));
    return Response.created(URI.create("/api/supplies/" + added.code())).entity(added).build();
  }

  @POST
  @Path("/{code}/receipts")
  @Operation(summary = "Enter supplies that came")
  @APIResponse(
      responseCode = "201",
      description = "What it did to what is on hand",
      content = @Content(schema = @Schema(implementation = SupplyMovement.class)))
  public Response receive(
      @PathParam("code") String code,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "five hundred caps",
                              value =
                                  """
                                  {"on": "2026-05-28", "count": 500, "note": "Two bags of 250"}
                                  """)))
          Receipt said) {
    return written(
        code, key, said, () -> supplies.receive(code, said.on(), said.count(), said.note()));
  }

  @POST
  @Path("/{code}/counts")
  @Operation(
      summary = "Enter what was counted; the book follows",
      description = "A count stands for the end of its day.")
  @APIResponse(
      responseCode = "201",
      description = "The difference to the book, as change",
      content = @Content(schema = @Schema(implementation = SupplyMovement.class)))
  public Response count(
      @PathParam("code") String code,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "counted in May",
                              value =
                                  """
                                  {"on": "2026-05-30", "count": 480}
                                  """)))
          Count said) {
    return written(code, key, said, () -> supplies.count(code, said.on(), said.count()));
  }

  private Response written(String code, String key, Object said, Supplier<SupplyMovement> act) {
    return once.answer(
        key,
        said,
        () ->
            Answer.created(
                UriBuilder.fromPath("/api/supplies/{code}/movements").build(code), act.get()));
  }
}
