package org.barreltally.keeping.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.function.Function;
import org.barreltally.keeping.Backups;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The whole book in one file. The names and addresses of people are in it: for the owner alone. */
@Path("/api/backups")
@RolesAllowed("owner")
@Tag(name = "Backups")
public class BackupsApi {

  private static final String ONE =
      """
      {"name": "barreltally-20260620T210500123Z.zip", "madeAt": "2026-06-20T21:05:00.123Z",
       "bytes": 20114, "sha256": "9f2feb0f1ef425b292f2f94bdc8482494df430413e03d42e4c83e1c1a6d4a1a0",
       "applicationVersion": "0.1.0", "schemaVersion": "035", "rows": 320,
       "tables": [{"table": "lots", "rows": 14}, {"table": "movements", "rows": 31}]}
      """;

  private final Backups backups;

  BackupsApi(Backups backups) {
    this.backups = backups;
  }

  @POST
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Write the whole book into a file, while everybody goes on working",
      description =
          "A zip of one CSV per table with its checksum. It goes into the folder of the backups and"
              + " is read again before the answer; the oldest go when there are more than are kept."
              + " Restore it with the program's command restore.")
  @APIResponse(
      responseCode = "201",
      description = "Made, and readable",
      content =
          @Content(
              schema = @Schema(implementation = BackupView.class),
              examples = @ExampleObject(name = "a small book", value = ONE)))
  public Response make() {
    BackupView made = BackupView.of(backups.make());
    return Response.created(URI.create("/api/backups/" + made.name())).entity(made).build();
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(summary = "The backups there are, the newest first")
  @APIResponse(
      responseCode = "200",
      description = "A part of the list",
      content =
          @Content(
              examples = @ExampleObject(name = "one backup", value = "{\"items\": [" + ONE + "]}")))
  public Page<BackupView> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        backups.list(page.after(Function.identity()).orElse(null), page.limit() + 1).stream()
            .map(BackupView::of)
            .toList(),
        BackupView::name);
  }

  @GET
  @Path("/{name}")
  @Produces("application/zip")
  @Operation(
      summary = "Fetch a backup",
      description =
          "Keep it where only you can read it: the names and addresses of people are in it.")
  public Response fetch(
      @Parameter(example = "barreltally-20260620T210500123Z.zip") @PathParam("name") String name) {
    java.nio.file.Path file = backups.file(name);
    return Response.ok(file)
        .header(
            HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + file.getFileName() + "\"")
        .build();
  }
}
