package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.Papers;
import org.barreltally.documents.ShopPapers;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The papers of shops on consignment. */
@Path("/api/shops/{code}")
@Tag(name = "Papers")
public class ShopPapersApi {

  private final ShopPapers papers;

  ShopPapersApi(ShopPapers papers) {
    this.papers = papers;
  }

  @GET
  @Path("/statement.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the statement of a shop",
      description =
          "Its shelf by lot, each count with what was sold, broken and missing, the terms, and the account.")
  @APIResponse(
      responseCode = "200",
      description = "One page or more",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "statement", value = PdfAnswer.EXAMPLE)))
  public Response statement(
      @PathParam("code") String code,
      @QueryParam("from") String from,
      @QueryParam("to") String to) {
    return PdfAnswer.of(
        Papers.pages(papers.statement(code, Asked.day(from, "from"), Asked.day(to, "to"))),
        "statement-" + code);
  }

  @GET
  @Path("/deliveries/{id}/note.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(summary = "Draw the note that goes along with jars to a shop, or home from it")
  @APIResponse(
      responseCode = "200",
      description = "One page or more",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "note", value = PdfAnswer.EXAMPLE)))
  public Response note(@PathParam("code") String code, @PathParam("id") UUID id) {
    return PdfAnswer.of(Papers.pages(papers.note(code, id)), "consignment-note-" + id);
  }
}
