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

/** The tag of a barrel. */
@Path("/api/barrels/{tag}/tag.pdf")
@Tag(name = "Papers")
public class BarrelTagApi {

  private final Tags tags;

  BarrelTagApi(Tags tags) {
    this.tags = tags;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the tag of a barrel",
      description =
          "Grade, lot, crop, net weight by the book of today, density and color, and the maker. Refused while"
              + " its lot is held, and once it is drained. Your state agency decides what a barrel that is sold"
              + " must carry.")
  @APIResponse(
      responseCode = "200",
      description = "A page of 6 by 4 inches",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "tag", value = PdfAnswer.EXAMPLE)))
  public Response draw(@PathParam("tag") String tag) {
    return PdfAnswer.of(Papers.tag(tags.ofBarrel(tag)), "tag-" + tag);
  }
}
