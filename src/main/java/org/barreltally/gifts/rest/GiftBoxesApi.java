package org.barreltally.gifts.rest;

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
import org.barreltally.gifts.GiftBox;
import org.barreltally.gifts.GiftBoxes;
import org.barreltally.gifts.MakeBox;
import org.barreltally.measure.Quantity;
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

/** Gift boxes as recipes. */
@Path("/api/gift-boxes")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Gift orders")
public class GiftBoxesApi {

  private static final String TASTER =
      """
      {"name": "Taster", "price": {"amount": 22.00, "currency": "USD"},
       "contents": [
         {"container": "HP", "grade": "golden", "count": 1,
          "substitutes": [{"container": "HP", "grade": "amber"}]},
         {"container": "HP", "grade": "dark", "count": 1}],
       "carton": {"name": "Two-jar carton", "weight": {"value": 0.6, "unit": "lb"}},
       "ribbon": "Red ribbon"}
      """;

  /** One packed box on the scale; today if no day is given. */
  public record Weighed(LocalDate on, Quantity weight) {}

  private final GiftBoxes boxes;
  private final Once once;

  GiftBoxesApi(GiftBoxes boxes, Once once) {
    this.boxes = boxes;
    this.once = once;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Make a gift box",
      description =
          "What is in it by size and grade, what may go in its place (first choice first), price,"
              + " carton, ribbon and card; of these the name alone will do. A box is never changed:"
              + " a newer one of the same name takes its place in new orders. The packed weight is"
              + " reckoned from jars, syrup and carton until boxes were weighed.")
  @APIResponse(
      responseCode = "201",
      description = "The box",
      content = @Content(schema = @Schema(implementation = GiftBox.class)))
  public Response make(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content = @Content(examples = @ExampleObject(name = "taster", value = TASTER)))
          MakeBox said) {
    return once.answer(
        key,
        said,
        () -> {
          GiftBox made = boxes.make(said);
          return Answer.created(URI.create("/api/gift-boxes/" + made.id()), made);
        });
  }

  @GET
  @Operation(summary = "Gift boxes in the order they were made")
  public Page<GiftBox> list(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        boxes.list(page.after(UUID::fromString).orElse(null), page.limit() + 1),
        box -> box.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One gift box")
  public GiftBox one(@PathParam("id") UUID id) {
    return boxes.at(id);
  }

  @POST
  @Path("/{id}/weighings")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Weigh a packed box, so that its weight is no longer an estimate",
      description = "Further boxes weighed later make the mean.")
  @APIResponse(
      responseCode = "201",
      description = "The box with its weight",
      content = @Content(schema = @Schema(implementation = GiftBox.class)))
  public Response weigh(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "one box",
                              value =
                                  "{\"on\": \"2026-11-20\", \"weight\": {\"value\": 2.84, \"unit\":"
                                      + " \"lb\"}}")))
          Weighed said) {
    return once.answer(
        key,
        said,
        () ->
            Answer.created(
                URI.create("/api/gift-boxes/" + id), boxes.weigh(id, said.on(), said.weight())));
  }
}
