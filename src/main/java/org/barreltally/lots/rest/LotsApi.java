package org.barreltally.lots.rest;

import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.function.Function;
import org.barreltally.ledger.Days;
import org.barreltally.lots.AwardsOfLots;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Holds;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;
import org.barreltally.lots.Tracing;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.barreltally.web.Asked;
import org.barreltally.web.Because;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Lots: what they are, where they came from and where they went. */
@Path("/api/lots")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Lots")
public class LotsApi {

  private static final String BODY = "Send the record as JSON.";

  private final Lots lots;
  private final Holds holds;
  private final Grading grading;
  private final Tracing tracing;
  private final Instance<AwardsOfLots> awards;
  private final Days days;

  LotsApi(
      Lots lots,
      Holds holds,
      Grading grading,
      Tracing tracing,
      Instance<AwardsOfLots> awards,
      Days days) {
    this.lots = lots;
    this.holds = holds;
    this.grading = grading;
    this.tracing = tracing;
    this.awards = awards;
    this.days = days;
  }

  /** A later grading: the newest colour reading and tasting. */
  public record Regrade(
      LocalDate on,
      Double transmittance,
      Taste taste,
      @Size(max = Because.REASON_MAX, message = Because.MEND) String reason) {}

  @GET
  @Operation(
      summary = "Lots by code",
      description = "Filters: kind (bulk, packed), grade, held (true, false).")
  @APIResponse(
      responseCode = "200",
      description = "Lots, and where the list goes on",
      content = @Content(examples = @ExampleObject(name = "a barrel", value = LotExamples.LOTS)))
  public Page<LotView> list(
      @QueryParam("kind") String kind,
      @QueryParam("grade") String grade,
      @QueryParam("held") String held,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    Lots.Filter filter =
        new Lots.Filter(
            kind == null ? null : Lot.Kind.of(kind),
            grade == null ? null : ColorClass.of(grade),
            Asked.yesOrNo(held, "held"));
    return page.page(
        lots.list(filter, page.after(Function.identity()).orElse(null), page.limit() + 1).stream()
            .map(LotView::of)
            .toList(),
        LotView::lot);
  }

  @GET
  @Path("/{lot}")
  @Operation(summary = "A lot as it stands, with the awards it has won")
  @APIResponse(
      responseCode = "200",
      description = "The lot",
      content =
          @Content(
              schema = @Schema(implementation = LotView.class),
              examples = @ExampleObject(name = "jars", value = LotExamples.LOT)))
  public LotView at(@PathParam("lot") String lot) {
    return LotView.of(
        lots.at(lot), awards.stream().flatMap(told -> told.of(lot).stream()).toList());
  }

  @GET
  @Path("/{lot}/trace")
  @Operation(
      summary = "Where a lot came from and where it went, over every link",
      description = "Heels, blends and last year's stock included, in both directions.")
  @APIResponse(
      responseCode = "200",
      description = "Parents, children and whereabouts",
      content =
          @Content(
              schema = @Schema(implementation = TraceView.class),
              examples = @ExampleObject(name = "a heel in pints", value = LotExamples.TRACE)))
  public TraceView trace(@PathParam("lot") String lot) {
    return TraceView.of(tracing.trace(lot));
  }

  @POST
  @Path("/{lot}/hold")
  @Operation(
      summary = "Hold a lot: it is not drawn or promised until it is released",
      description = "Holding a held lot again records the further reason.")
  public LotView hold(
      @PathParam("lot") String lot,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "mould",
                              value = "{\"reason\": \"Mould in two returned pints\"}")))
          Because said) {
    return LotView.of(holds.hold(lot, said.reason()));
  }

  @POST
  @Path("/{lot}/release")
  @Operation(summary = "Release a held lot")
  public LotView release(
      @PathParam("lot") String lot,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "looked at",
                              value = "{\"reason\": \"All opened and tasted: caps were loose\"}")))
          Because said) {
    return LotView.of(holds.release(lot, said.reason()));
  }

  @POST
  @Path("/{lot}/regrade")
  @Transactional
  @Operation(
      summary = "Grade a lot again",
      description = "Jars change to the pool of the new grade; what was sold keeps the old one.")
  public LotView regrade(
      @PathParam("lot") String lot,
      @NotNull(message = BODY)
          @Valid
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "darkened",
                              value =
                                  """
                                  {"on": "2026-09-10", "transmittance": 48, "taste": "clean",
                                   "reason": "Darkened in the plastic jugs"}
                                  """)))
          Regrade said) {
    LocalDate on = said.on() == null ? days.today() : days.happened(said.on(), "on");
    grading.grade(lot, on, said.transmittance(), said.taste(), said.reason());
    return LotView.of(lots.at(lot));
  }
}
