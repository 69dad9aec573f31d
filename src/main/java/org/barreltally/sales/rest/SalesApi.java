package org.barreltally.sales.rest;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
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
import java.util.List;
import java.util.UUID;
import org.barreltally.sales.Conflict;
import org.barreltally.sales.CountNeeded;
import org.barreltally.sales.CountsNeeded;
import org.barreltally.sales.Sale;
import org.barreltally.sales.Sales;
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

/** Sales of every channel: read, looked at, taken back. */
@Path("/api/sales")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Sales")
public class SalesApi {

  private final Sales sales;
  private final CountsNeeded counts;
  private final Once once;

  SalesApi(Sales sales, CountsNeeded counts, Once once) {
    this.sales = sales;
    this.counts = counts;
    this.once = once;
  }

  /** Why a sale is taken back. */
  public record Undo(
      @NotBlank(message = "Say why the sale is taken back.")
          @Size(max = 500, message = "Say it in at most 500 characters.")
          String reason) {}

  /** What stands below zero at tables. */
  public record CountList(List<CountNeeded> items) {}

  @GET
  @Operation(
      summary = "List sales in the order of their ids",
      description = "By place; with toLookAt=true only those about which something is noted.")
  @APIResponse(
      responseCode = "200",
      description = "A part of the sales",
      content = @Content(examples = @ExampleObject(name = "one sale", value = SaleExamples.MERGED)))
  public Page<SaleView> list(
      @QueryParam("place") String place,
      @QueryParam("toLookAt") boolean toLookAt,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    List<Sale> found =
        sales.list(place, toLookAt, page.after(UUID::fromString).orElse(null), page.limit() + 1);
    return page.page(found.stream().map(SaleView::of).toList(), view -> view.id().toString());
  }

  @GET
  @Path("/conflicts")
  @Operation(
      summary = "Sale ids that came again with other content, to be looked at",
      description =
          "The first telling counts. If the other one happened too, tell it under an id of its own.")
  @APIResponse(
      responseCode = "200",
      description = "A part of the conflicts",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "two counts",
                      value =
                          """
                          {"items": [{"id": "01a0c101-2222-7000-8000-0000000000c1",
                            "sale": "01a0c101-2222-7000-8000-000000000001",
                            "place": "fernby-harvest-fair-2026",
                            "said": "{\\"place\\":\\"fernby-harvest-fair-2026\\",\\"channel\\":\\"table\\"}",
                            "recordedAt": "2026-10-03T15:00:00Z"}]}
                          """)))
  public Page<Conflict> conflicts(
      @QueryParam("place") String place,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        sales.conflicts(place, page.after(UUID::fromString).orElse(null), page.limit() + 1),
        conflict -> conflict.id().toString());
  }

  @GET
  @Path("/count-needed")
  @Operation(summary = "What stands below zero at tables and should be counted")
  @APIResponse(
      responseCode = "200",
      description = "By place, size and lot",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "two pints",
                      value =
                          """
                          {"items": [{"place": "fernby-harvest-fair-2026", "container": "PT", "onTable": -2,
                            "why": "2 × PT more were sold than came to the table by the book."}]}
                          """)))
  public CountList countNeeded(@QueryParam("place") String place) {
    return new CountList(counts.list(place));
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One sale")
  @APIResponse(
      responseCode = "200",
      description = "The sale",
      content =
          @Content(
              schema = @Schema(implementation = SaleView.class),
              examples = @ExampleObject(name = "a pint, taken back", value = SaleExamples.SALE)))
  public SaleView one(@PathParam("id") UUID id) {
    return SaleView.of(sales.at(id));
  }

  @POST
  @Path("/{id}/reversal")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Take a sale back",
      description =
          "Its movement is reversed, dated when the sale happened; it stays listed as undone, and"
              + " sending it again changes nothing. Taking it back again changes nothing either.")
  @APIResponse(
      responseCode = "200",
      description = "The sale, undone",
      content = @Content(schema = @Schema(implementation = SaleView.class)))
  public Response undo(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = "Send the reason as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "slip of the thumb",
                              value = "{\"reason\": \"Wrong size tapped\"}")))
          Undo said) {
    return once.answer(
        key,
        said,
        () ->
            new Answer(
                200, URI.create("/api/sales/" + id), SaleView.of(sales.undo(id, said.reason()))));
  }
}
