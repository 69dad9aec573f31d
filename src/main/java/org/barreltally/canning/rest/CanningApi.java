package org.barreltally.canning.rest;

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
import java.util.function.Function;
import org.barreltally.canning.CanningOrder;
import org.barreltally.canning.CanningRuns;
import org.barreltally.canning.PackSheet;
import org.barreltally.canning.WhatIf;
import org.barreltally.refusal.InvalidField;
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

/** Barrels into jars: thought through, done, and read again. */
@Path("/api/canning")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Canning")
public class CanningApi {

  private static final String THOUGHT_THROUGH =
      """
      {"on": "2026-06-20", "draws": [{"barrel": "B-01", "all": true}],
       "fillTemperature": {"value": 185, "unit": "degF"},
       "filterHoldUp": {"value": 4, "unit": "lb"},
       "fills": [{"container": "PT", "count": 160}, {"container": "HP", "rest": true}]}
      """;

  private static final String DONE =
      """
      {"on": "2026-06-20",
       "draws": [{"barrel": "B-01", "all": true},
                 {"barrel": "B-02", "weight": {"value": 100, "unit": "lb"}}],
       "targetBrix": 66.9, "fillTemperature": {"value": 185, "unit": "degF"},
       "filterHoldUp": {"value": 4, "unit": "lb"}, "overfill": {"value": 2, "unit": "g"},
       "fills": [{"container": "PT", "count": 160, "broken": 3},
                 {"container": "HP", "count": 300}],
       "heel": {"weight": {"value": 19.4, "unit": "lb"}, "keptIn": "H-01"},
       "transmittance": 57, "taste": "clean"}
      """;

  private final WhatIf whatIf;
  private final CanningRuns runs;
  private final Once once;

  CanningApi(WhatIf whatIf, CanningRuns runs, Once once) {
    this.whatIf = whatIf;
    this.runs = runs;
    this.once = once;
  }

  @POST
  @Path("/what-if")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Think a canning run through; nothing is stored",
      description =
          "One size may take the rest. What would keep the run from being stored stands in"
              + " cautions.")
  @APIResponse(
      responseCode = "200",
      description = "The pack sheet",
      content = @Content(schema = @Schema(implementation = PackSheet.class)))
  public PackSheet whatIf(
      @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "one barrel", value = THOUGHT_THROUGH)))
          CanningOrder order) {
    return whatIf.of(said(order));
  }

  @POST
  @Path("/runs")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Store a canning run and make its lot",
      description =
          "Refused below the capping temperature or off the density limits unless a"
              + " releaseReason says why it is released.")
  @APIResponse(
      responseCode = "201",
      description = "The pack sheet with the lot made",
      content = @Content(schema = @Schema(implementation = PackSheet.class)))
  public Response run(
      @HeaderParam("Idempotency-Key") String key,
      @RequestBody(
              content = @Content(examples = @ExampleObject(name = "two barrels", value = DONE)))
          CanningOrder order) {
    return once.answerWith(
        key,
        said(order),
        closing -> runs.store(order, (sheet, write) -> closing.close(made(sheet), write::add)));
  }

  private static Answer made(PackSheet sheet) {
    return Answer.created(URI.create("/api/canning/runs/" + sheet.lot()), sheet);
  }

  @GET
  @Path("/runs")
  @Operation(summary = "Canning runs, by the lot they made")
  public Page<PackSheet> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        runs.list(page.after(Function.identity()).orElse(null), page.limit() + 1), PackSheet::lot);
  }

  @GET
  @Path("/runs/{lot}")
  @Operation(summary = "The pack sheet of a stored run, as it was given")
  public PackSheet at(@PathParam("lot") String lot) {
    return runs.at(lot);
  }

  private static CanningOrder said(CanningOrder order) {
    if (order == null) {
      throw new InvalidField("draws", "Send the run as JSON: draws, fillTemperature and fills.");
    }
    return order;
  }
}
