package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.PackingLists;
import org.barreltally.documents.Papers;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The packing list of a show. */
@Path("/api/shows/{id}/packing-list.pdf")
@Tag(name = "Papers")
public class PackingListApi {

  private final PackingLists lists;

  PackingListApi(PackingLists lists) {
    this.lists = lists;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the packing list of a show",
      description =
          "Every lot packed out, with boxes to tick out and home and lines to count on; what is"
              + " reserved and not packed yet, with its lot left open; table kit, papers, change money,"
              + " and the weight against what the vehicle should carry.")
  @APIResponse(
      responseCode = "200",
      description = "One page or more",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "packing list", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("id") UUID id) {
    return PdfAnswer.of(Papers.pages(lists.of(id)), "packing-list-" + id);
  }
}
