package org.barreltally.documents.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.barreltally.documents.LabelPrint;
import org.barreltally.documents.LabelPrints;
import org.barreltally.documents.PrintLabels;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The log of label prints of a lot. */
@Path("/api/lots/{lot}/label-prints")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Papers")
public class LabelPrintsApi {

  private static final String PRINT =
      """
      {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "lot": "P260620-1", "container": "PT",
       "count": 160, "sheet": "letter-2x5", "startAt": 3, "printedAt": "2026-06-20T19:02:11Z",
       "reprint": false}
      """;

  private final LabelPrints prints;
  private final Once once;

  LabelPrintsApi(LabelPrints prints, Once once) {
    this.prints = prints;
    this.once = once;
  }

  @GET
  @Operation(summary = "Prints of a lot's labels in the order they were recorded")
  @APIResponse(
      responseCode = "200",
      description = "Prints, and where the list goes on",
      content =
          @Content(
              examples =
                  @ExampleObject(name = "one print", value = "{\"items\": [" + PRINT + "]}")))
  public Page<LabelPrintView> list(
      @PathParam("lot") String lot,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        prints.list(lot, page.after(UUID::fromString).orElse(null), page.limit() + 1).stream()
            .map(LabelPrintView::of)
            .toList(),
        view -> view.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One print of labels")
  @APIResponse(
      responseCode = "200",
      description = "The print",
      content =
          @Content(
              schema = @Schema(implementation = LabelPrintView.class),
              examples = @ExampleObject(name = "pints", value = PRINT)))
  public LabelPrintView one(@PathParam("lot") String lot, @PathParam("id") UUID id) {
    return LabelPrintView.of(prints.at(lot, id));
  }

  @GET
  @Path("/{id}/labels.pdf")
  @Produces(PdfAnswer.TYPE)
  @Operation(
      summary = "Draw a recorded print as it was",
      description =
          "With the maker, grade and dates that stood on it then, on its sheet. Refused while the lot is"
              + " held."
              + PdfAnswer.CAUTION)
  @APIResponse(
      responseCode = "200",
      description = "Sheets of labels",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "labels", value = PdfAnswer.EXAMPLE)))
  public Response pdf(@PathParam("lot") String lot, @PathParam("id") UUID id) {
    return PdfAnswer.of(prints.pdf(lot, id), "labels-" + lot + "-" + id);
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record that labels are printed",
      description =
          "A reprint names the print it stands in for and says why; it carries the words of its original."
              + " Refused as drawing is. With an Idempotency-Key, a repeat is recorded once."
              + PdfAnswer.CAUTION)
  @APIResponse(
      responseCode = "201",
      description = "The print",
      content = @Content(schema = @Schema(implementation = LabelPrintView.class)))
  public Response record(
      @PathParam("lot") String lot,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      examples = {
                        @ExampleObject(
                            name = "pints",
                            value =
                                """
                                {"container": "PT", "count": 160, "sheet": "letter-2x5", "startAt": 3}
                                """),
                        @ExampleObject(
                            name = "printed again",
                            value =
                                """
                                {"container": "PT", "count": 10, "sheet": "letter-2x5",
                                 "reprintOf": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d",
                                 "reason": "A sheet jammed"}
                                """)
                      }))
          PrintLabels said) {
    if (key != null) {
      return once.answer(key, said, () -> answer(lot, said));
    }
    Answer answer = answer(lot, said);
    return Response.created(answer.location()).entity(answer.body()).build();
  }

  private Answer answer(String lot, PrintLabels said) {
    LabelPrint print = prints.record(lot, said);
    return Answer.created(
        URI.create("/api/lots/" + lot + "/label-prints/" + print.id()), LabelPrintView.of(print));
  }
}
