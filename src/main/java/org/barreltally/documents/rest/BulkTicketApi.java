package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.BulkTickets;
import org.barreltally.documents.Papers;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The ticket of a barrel sold whole. */
@Path("/api/bulk-sales/{id}/ticket.pdf")
@Tag(name = "Papers")
public class BulkTicketApi {

  private final BulkTickets tickets;

  BulkTicketApi(BulkTickets tickets) {
    this.tickets = tickets;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the ticket of a barrel sold whole",
      description =
          "Seller, buyer, barrel, lot, the seller's, the buyer's and the agreed weight and grade, price per"
              + " lb, what is due, and the difference split into weight and grade. The seller stands on it"
              + " as it was set when the sale was recorded. Your state agency and weights-and-measures"
              + " office decide what a ticket must say.")
  @APIResponse(
      responseCode = "200",
      description = "One page",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "ticket", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("id") UUID id) {
    return PdfAnswer.of(Papers.form(tickets.of(id)), "bulk-ticket-" + id);
  }
}
