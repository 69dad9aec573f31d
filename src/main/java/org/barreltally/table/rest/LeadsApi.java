package org.barreltally.table.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.UUID;
import org.barreltally.table.Lead;
import org.barreltally.table.Leads;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Who waits for a call about gift boxes. */
@Path("/api/leads")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Show table")
public class LeadsApi {

  private final Leads leads;

  LeadsApi(Leads leads) {
    this.leads = leads;
  }

  /** Who waits for a call. */
  public record LeadList(List<Lead> items) {}

  @GET
  @RolesAllowed({"owner", "packing", "table"})
  @Operation(summary = "Who waits for a call about gift boxes, the longest first")
  public LeadList open() {
    return new LeadList(leads.open());
  }

  @DELETE
  @Path("/{lead}")
  @RolesAllowed({"owner", "packing", "table"})
  @Operation(summary = "Dealt with: name, number and wish are removed")
  public void done(@PathParam("lead") UUID lead) {
    leads.done(lead);
  }
}
