package org.barreltally.reconciliation.rest;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.barreltally.reconciliation.SeasonFlows;
import org.barreltally.reconciliation.flows.Reconciler;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Which weighing, reading or count does not fit the others. */
@Path("/api/reconciliation/flows")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Reconciliation")
public class ReconciliationFlowsApi {

  private static final String BYPASS =
      """
      {"nodes": ["canner", "filter", "shelf"],
       "flows": [
         {"name": "drawn", "to": "canner", "measured": 101.9, "variance": 0.25},
         {"name": "filtered", "from": "canner", "to": "filter", "measured": 100.1, "variance": 0.25},
         {"name": "left in the pan", "from": "canner"},
         {"name": "held by the filter", "from": "filter", "measured": 3.9, "variance": 0.04},
         {"name": "in jars", "from": "filter", "to": "shelf", "measured": 96.4, "variance": 0.09},
         {"name": "counted", "from": "shelf", "measured": 91.2, "variance": 0.09}]}
      """;

  /** About 0.1 s; a thousand flows take many times that. */
  private static final int AT_A_GLANCE = 300;

  private final SeasonFlows flows;

  ReconciliationFlowsApi(SeasonFlows flows) {
    this.flows = flows;
  }

  @GET
  @Operation(
      summary = "Find which measurement of a season does not fit the others",
      description =
          "The season as flows of syrup between barrels, runs, shelves, tables and shops, with what was"
              + " weighed, read and counted and how well each is known. Every place must give out what it"
              + " took in; the values nearest to the measured ones that do so are the reconciled ones, and"
              + " what would have to be moved farthest is named first. It advises: weigh or count again"
              + " before you change anything.")
  @APIResponse(
      responseCode = "200",
      description = "What agrees and what does not",
      content = @Content(schema = @Schema(implementation = SeasonView.class)))
  public SeasonView of(@QueryParam("season") String season) {
    return SeasonView.of(flows.of(Asked.yearGiven(season, "season")));
  }

  /**
   * The same, where it takes no longer than a page should.
   *
   * @throws org.barreltally.reconciliation.flows.NetworkTooLarge for a season of more flows
   */
  public SeasonView atAGlance(int season) {
    return SeasonView.of(flows.of(season, AT_A_GLANCE));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Reconcile a network of your own; nothing is stored",
      description =
          "Flows lead from node to node, or from or to outside where from or to is left out. A measured flow"
              + " has its variance, the square of its standard uncertainty; leave both out where nobody"
              + " measured. At most 1,000 flows and nodes.")
  @APIResponse(
      responseCode = "200",
      description = "The network reconciled",
      content = @Content(schema = @Schema(implementation = NetworkView.class)))
  public NetworkView reconcile(
      @RequestBody(
              content = @Content(examples = @ExampleObject(name = "a canning", value = BYPASS)))
          NetworkSaid said) {
    if (said == null) {
      throw new InvalidField("", "Send the network as JSON.");
    }
    return NetworkView.of(Reconciler.reconcile(said.asNetwork()));
  }
}
