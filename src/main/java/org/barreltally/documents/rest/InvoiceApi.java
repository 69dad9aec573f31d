package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.Invoices;
import org.barreltally.documents.Papers;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The invoice or receipt of a sale away from shows. */
@Path("/api/sales/{id}/invoice.pdf")
@Tag(name = "Papers")
public class InvoiceApi {

  private final Invoices invoices;

  InvoiceApi(Invoices invoices) {
    this.invoices = invoices;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the invoice, or the receipt if nothing is owing, of a sale away from shows",
      description =
          "Number, seller, buyer, jars with size, grade and lot, amounts, tax and what was paid. Your state"
              + " agency and tax preparer decide what an invoice must say.")
  @APIResponse(
      responseCode = "200",
      description = "One page",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "invoice", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("id") UUID id) {
    return PdfAnswer.of(Papers.form(invoices.of(id)), "invoice-" + id);
  }
}
