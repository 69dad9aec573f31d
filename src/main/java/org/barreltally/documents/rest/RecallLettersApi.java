package org.barreltally.documents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.barreltally.documents.Papers;
import org.barreltally.documents.RecallLetters;
import org.barreltally.refusal.InvalidField;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The letters of a recall. */
@Path("/api/recalls/{id}/letters.pdf")
@Tag(name = "Papers")
public class RecallLettersApi {

  private final RecallLetters letters;

  RecallLettersApi(RecallLetters letters) {
    this.letters = letters;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw the letters of a recall, one to each holder known by name",
      description =
          "Address where it is known, lots and sizes, what we ask, and a slip to answer on. Letters of a"
              + " rehearsal say so. Your food inspector and state agency decide whom to tell and how.")
  @APIResponse(
      responseCode = "200",
      description = "A page or more for each holder",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "letters", value = PdfAnswer.EXAMPLE)))
  public Response draw(
      @PathParam("id") UUID id,
      @Parameter(description = "The number of one holder; left out: all of them")
          @QueryParam("holder")
          String holder) {
    return PdfAnswer.of(
        Papers.letters("Letters of recall " + id, letters.of(id, number(holder))), "recall-" + id);
  }

  private static Integer number(String holder) {
    if (holder != null && !holder.matches("[1-9][0-9]{0,6}")) {
      throw new InvalidField("holder", "Give the holder's number, a whole number from 1.");
    }
    return holder == null ? null : Integer.valueOf(holder);
  }
}
