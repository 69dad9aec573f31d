package org.barreltally.reconciliation.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.barreltally.reconciliation.Balances;
import org.barreltally.refusal.InvalidField;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Where every gallon of a year went. */
@Path("/api/reconciliation")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Reconciliation")
public class ReconciliationApi {

  private final Balances balances;

  ReconciliationApi(Balances balances) {
    this.balances = balances;
  }

  @GET
  @Operation(
      summary = "Reconcile a year's stock against its production",
      description =
          "season is the year the movements are booked in; lot asks for one lot alone. opening + made +"
              + " water + bought + returned = out + converted + unexplained + closing. The unexplained is what"
              + " weighings, runs and counts could not account for, with its standard uncertainty, and whether"
              + " it means anything.")
  @APIResponse(
      responseCode = "200",
      description = "The balance",
      content = @Content(schema = @Schema(implementation = ReconciliationView.class)))
  public ReconciliationView of(@QueryParam("season") String season, @QueryParam("lot") String lot) {
    return ReconciliationView.of(balances.of(year(season), lot));
  }

  static int year(String text) {
    if (text == null || !text.matches("(19|2\\d)\\d\\d")) {
      throw new InvalidField("season", "Give the year, for example 2026.");
    }
    return Integer.parseInt(text);
  }
}
