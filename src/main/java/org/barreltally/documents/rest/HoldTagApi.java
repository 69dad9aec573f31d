package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import org.barreltally.documents.Papers;
import org.barreltally.documents.Tags;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The tag of a held lot. */
@Path("/api/lots/{lot}/hold-tag.pdf")
@Tag(name = "Papers")
public class HoldTagApi {

  private final Tags tags;

  HoldTagApi(Tags tags) {
    this.tags = tags;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the tag of a held lot",
      description =
          "Since when and why it is held. Refused for a lot that is not held. The tag does not make syrup safe"
              + " or unsafe: ask your inspector where you doubt it.")
  @APIResponse(
      responseCode = "200",
      description = "A page of 6 by 4 inches",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "tag", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("lot") String lot) {
    return PdfAnswer.of(Papers.tag(tags.ofHold(lot)), "hold-" + lot);
  }
}
