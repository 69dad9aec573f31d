package org.barreltally.stock.rest;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.barreltally.stock.OpenedLot;
import org.barreltally.stock.OpeningStock;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What was there before the book began. */
@Path("/api/opening-stock")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Stock")
public class OpeningStockApi {

  /** The lots made, barrels in the order of the file, then jars by lot. */
  public record Opened(List<OpenedLot> items) {}

  private final OpeningStock opening;
  private final Once once;

  OpeningStockApi(OpeningStock opening, Once once) {
    this.opening = opening;
    this.once = once;
  }

  @POST
  @Consumes("text/csv")
  @Operation(
      summary = "Enter opening stock of barrels and jars from a CSV file, all of it or nothing",
      description =
          "RFC 4180 in UTF-8 with a header row, at most 5,000 rows. Columns: kind (barrel or jars),"
              + " lot, season, brix, brixAt, instrument, reference, transmittance, taste; for a"
              + " barrel also tag, filledOn, material, capacity, gross, tare, dip, dipAt; for jars"
              + " also place, container, count, packedOn. Quantities are written with their unit:"
              + " 486.5 lb. What needs mending is named by line and column, all at once.")
  @APIResponse(
      responseCode = "201",
      description = "The lots made",
      content =
          @Content(
              schema = @Schema(implementation = Opened.class),
              examples =
                  @ExampleObject(
                      name = "a barrel and a lot of jars",
                      value =
                          """
                          {"items": [
                            {"lot": "S25-001", "tag": "B-17", "seasons": [2025],
                             "grade": "amber", "held": false},
                            {"lot": "P250620-1", "seasons": [2024, 2025], "grade": "dark",
                             "held": false}]}
                          """)))
  public Response enter(
      @HeaderParam("Idempotency-Key") String key,
      @RequestBody(
              content =
                  @Content(
                      mediaType = "text/csv",
                      schema = @Schema(implementation = String.class),
                      examples =
                          @ExampleObject(
                              name = "a barrel and a lot of jars",
                              value =
                                  """
                                  kind,tag,lot,season,filledOn,material,gross,tare,brix,\
                                  transmittance,taste,place,container,count,packedOn
                                  barrel,B-17,,2025,2025-03-22,stainless,486.5 lb,42 lb,66.9,\
                                  62,clean,,,,
                                  jars,,P250620-1,2024 2025,,,,,67.1,41,clean,cool-room,PT,36,\
                                  2025-06-20
                                  """)))
          byte[] file) {
    return once.answer(
        key,
        file,
        () -> new Answer(201, URI.create("/api/stock"), new Opened(opening.enter(file))));
  }
}
