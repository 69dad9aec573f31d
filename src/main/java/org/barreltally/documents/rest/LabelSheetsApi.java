package org.barreltally.documents.rest;

import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.function.Function;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.LabelSheets;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The label sheets. */
@Path("/api/label-sheets")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Papers")
public class LabelSheetsApi {

  private static final String SHEET =
      """
      {"code": "own-2x4", "name": "Tall labels, 8 on a sheet", "paper": "letter", "unit": "in",
       "columns": 2, "rows": 4, "marginLeft": 0.25, "marginTop": 0.5,
       "labelWidth": 3.9, "labelHeight": 2.4, "gapAcross": 0.2, "gapDown": 0.1}
      """;

  private final LabelSheets sheets;

  LabelSheetsApi(LabelSheets sheets) {
    this.sheets = sheets;
  }

  @GET
  @Operation(
      summary = "List the label sheets by code",
      description =
          "Those known at a fresh start are common stock sizes from memory: measure yours.")
  @APIResponse(
      responseCode = "200",
      description = "Sheets, and where the list goes on",
      content =
          @Content(
              examples =
                  @ExampleObject(name = "one sheet", value = "{\"items\": [" + SHEET + "]}")))
  public Page<LabelSheet> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        sheets.list(page.after(Function.identity()).orElse(null), page.limit() + 1),
        LabelSheet::code);
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One label sheet")
  @APIResponse(
      responseCode = "200",
      description = "The sheet",
      content =
          @Content(
              schema = @Schema(implementation = LabelSheet.class),
              examples = @ExampleObject(name = "own sheet", value = SHEET)))
  public LabelSheet one(@PathParam("code") String code) {
    return sheets.at(code);
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Add a label sheet",
      description =
          "Lengths are in the unit given (in, mm). Refused when the labels reach over the paper. A sheet"
              + " keeps its lengths.")
  @APIResponse(
      responseCode = "201",
      description = "Added",
      content = @Content(schema = @Schema(implementation = LabelSheet.class)))
  public Response add(
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content = @Content(examples = @ExampleObject(name = "own sheet", value = SHEET)))
          LabelSheet said) {
    LabelSheet added = sheets.add(said);
    return Response.created(URI.create("/api/label-sheets/" + added.code())).entity(added).build();
  }
}
