package org.barreltally.shows.rest;

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
import java.util.List;
import java.util.UUID;
import org.barreltally.sales.Merged;
import org.barreltally.sales.Sales;
import org.barreltally.sales.rest.SaleBatch;
import org.barreltally.sales.rest.SaleExamples;
import org.barreltally.sales.rest.SaleView;
import org.barreltally.shows.Shows;
import org.barreltally.shows.settling.SettleShow;
import org.barreltally.shows.settling.Settlement;
import org.barreltally.shows.settling.Settling;
import org.barreltally.shows.settling.TableSelling;
import org.barreltally.web.Answer;
import org.barreltally.web.MayBeEmpty;
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

/** Sales at a show's table, and its settlement. */
@Path("/api/shows/{id}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Shows")
public class TableSalesApi {

  private final TableSelling selling;
  private final Settling settling;
  private final Sales sales;
  private final Shows shows;
  private final Once once;

  TableSalesApi(TableSelling selling, Settling settling, Sales sales, Shows shows, Once once) {
    this.selling = selling;
    this.settling = settling;
    this.sales = sales;
    this.shows = shows;
    this.once = once;
  }

  /** What became of the sales that were told, in their order. */
  public record MergedSales(List<SaleView> items) {}

  @POST
  @Path("/sales")
  @Operation(
      summary = "Tell sales at a show's table, one or a list",
      description =
          "Merged by id: a repeat with the same content changes nothing, one with other content is kept"
              + " as a conflict to look at. What happened is never refused: more sold than packed out"
              + " needs a count, an unknown lot is booked without a lot. Prices are those of the show's"
              + " list on the day unless given. A clock up to 12 hours ahead is taken and noted.")
  @APIResponse(
      responseCode = "201",
      description = "What became of each; of a single sale the sale itself",
      content =
          @Content(
              schema = @Schema(implementation = MergedSales.class),
              examples = @ExampleObject(name = "a deal", value = SaleExamples.MERGED)))
  public Response sell(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = ShowsApi.BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "a deal", value = SaleExamples.TOLD)))
          SaleBatch said) {
    return once.answer(
        key,
        said,
        () -> {
          List<Merged> merged = selling.sell(id, said.sales(), said.one());
          boolean kept = merged.stream().anyMatch(m -> m.result() == Merged.Result.KEPT);
          List<SaleView> views = merged.stream().map(SaleView::of).toList();
          return said.one()
              ? new Answer(
                  kept ? 201 : 200, URI.create("/api/sales/" + views.get(0).id()), views.get(0))
              : new Answer(
                  kept ? 201 : 200,
                  URI.create("/api/shows/" + id + "/sales"),
                  new MergedSales(views));
        });
  }

  @GET
  @Path("/sales")
  @Operation(summary = "List the sales at a show's table in the order of their ids")
  @APIResponse(
      responseCode = "200",
      description = "A part of the sales",
      content = @Content(examples = @ExampleObject(name = "one sale", value = SaleExamples.MERGED)))
  public Page<SaleView> list(
      @PathParam("id") UUID id,
      @QueryParam("toLookAt") boolean toLookAt,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        sales
            .list(
                shows.at(id).place(),
                toLookAt,
                page.after(UUID::fromString).orElse(null),
                page.limit() + 1)
            .stream()
            .map(SaleView::of)
            .toList(),
        view -> view.id().toString());
  }

  @POST
  @Path("/settlement")
  @Operation(
      summary = "Settle a show that was counted back or called off",
      description =
          "Units by the counts, money by the sales; one never changes the other. soldByLot is least and"
              + " most where jars were sold or carried over without lot. Settled again, it is reckoned"
              + " anew. No lot has a cost yet, so profit is before syrup.")
  @APIResponse(
      responseCode = "200",
      description = "The settlement",
      content =
          @Content(
              schema = @Schema(implementation = Settlement.class),
              examples =
                  @ExampleObject(name = "twelve dollars short", value = SettlementExample.SETTLED)))
  public Response settle(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @MayBeEmpty
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "hay paid from the drawer",
                              value =
                                  """
                                  {"payouts": {"amount": 20.00, "currency": "USD"}, "hours": 14}
                                  """)))
          SettleShow said) {
    SettleShow told = said == null ? SettleShow.NOTHING : said;
    return once.answer(
        key,
        told,
        () ->
            new Answer(
                200, URI.create("/api/shows/" + id + "/settlement"), settling.settle(id, told)));
  }

  @GET
  @Path("/settlement")
  @Operation(
      summary = "How a show stands now",
      description =
          "Reckoned anew at each reading, before and after it is settled: a count at a show it exchanged"
              + " jars with narrows soldByLot by itself.")
  @APIResponse(
      responseCode = "200",
      description = "The settlement as it stands",
      content =
          @Content(
              schema = @Schema(implementation = Settlement.class),
              examples =
                  @ExampleObject(name = "twelve dollars short", value = SettlementExample.SETTLED)))
  public Settlement settlement(@PathParam("id") UUID id) {
    return settling.read(id);
  }
}
