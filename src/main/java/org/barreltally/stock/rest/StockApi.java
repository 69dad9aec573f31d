package org.barreltally.stock.rest;

import jakarta.validation.Valid;
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
import java.util.UUID;
import java.util.function.Supplier;
import org.barreltally.ledger.Movements;
import org.barreltally.ledger.PostedMovement;
import org.barreltally.measure.ColorClass;
import org.barreltally.stock.Jars;
import org.barreltally.stock.RelocateJars;
import org.barreltally.stock.Stock;
import org.barreltally.stock.StockRow;
import org.barreltally.stock.WriteOffJars;
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

/** What stands where, carrying jars and writing them off. */
@Path("/api/stock")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Stock")
public class StockApi {

  private final Stock stock;
  private final Jars jars;
  private final Movements movements;
  private final Once once;

  StockApi(Stock stock, Jars jars, Movements movements, Once once) {
    this.stock = stock;
    this.jars = jars;
    this.movements = movements;
    this.once = once;
  }

  @GET
  @Operation(
      summary = "What stands at own places: jars by lot and size, barrels, kept heels",
      description = "With a container, only jars are listed. Mass in kg, volume in gal at 68 °F.")
  @APIResponse(
      responseCode = "200",
      description = "A part of the list, by place, kind, size or tag, and lot",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a barrel and its pints",
                      value =
                          """
                          {"items": [
                            {"place": "barrel-room", "kind": "barrel", "tag": "B-01",
                             "grade": "amber", "lot": "S26-001",
                             "mass": {"value": 201.785, "unit": "kg"},
                             "volumeAt68F": {"value": 40.13, "unit": "gal"}, "held": false},
                            {"place": "cool-room", "kind": "container", "container": "PT",
                             "grade": "amber", "lot": "P260620-1", "onHand": 160, "held": false}]}
                          """)))
  public Page<StockRow> list(
      @QueryParam("place") String place,
      @QueryParam("container") String container,
      @QueryParam("grade") String grade,
      @QueryParam("lot") String lot,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    Stock.Filter filter =
        new Stock.Filter(place, container, grade == null ? null : ColorClass.of(grade), lot);
    return page.page(
        stock.list(filter, page.after(StockRow.Key::of).orElse(null), page.limit() + 1),
        row -> row.key().text());
  }

  @POST
  @Path("/relocations")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Carry jars from one own place to another",
      description = "Jars of a held lot may be carried too: a hold stops promising.")
  @APIResponse(
      responseCode = "201",
      description = "The movement",
      content = @Content(schema = @Schema(implementation = PostedMovement.class)))
  public Response relocate(
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "to the barrel room",
                              value =
                                  """
                                  {"from": "cool-room", "to": "barrel-room", "container": "PT",
                                   "lot": "P260620-1", "count": 24,
                                   "reason": "Shelf repaired"}
                                  """)))
          RelocateJars said) {
    return moved(key, said, () -> jars.relocate(said));
  }

  @POST
  @Path("/write-offs")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Write jars off",
      description = "Causes: broken, sampled, discarded, given, unexplained.")
  @APIResponse(
      responseCode = "201",
      description = "The movement",
      content = @Content(schema = @Schema(implementation = PostedMovement.class)))
  public Response writeOff(
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "two broken pints",
                              value =
                                  """
                                  {"place": "cool-room", "container": "PT", "lot": "P260620-1",
                                   "count": 2, "cause": "broken"}
                                  """)))
          WriteOffJars said) {
    return moved(key, said, () -> jars.writeOff(said));
  }

  private Response moved(String key, Object said, Supplier<UUID> moving) {
    return once.answer(
        key,
        said,
        () -> {
          UUID movement = moving.get();
          return Answer.created(URI.create("/api/movements/" + movement), movements.at(movement));
        });
  }
}
