package org.barreltally.netcontents.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.barreltally.netcontents.Checking;
import org.barreltally.netcontents.NetContentsCheck;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The checks kept with a lot. */
@Path("/api/canning/runs/{lot}/net-contents-checks")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Net contents")
public class NetContentsChecksApi {

  private final Checking checking;

  NetContentsChecksApi(Checking checking) {
    this.checking = checking;
  }

  @GET
  @Operation(summary = "Net contents checks of a lot, oldest first, as they were answered")
  @APIResponse(
      responseCode = "200",
      description = "A part of the list",
      content =
          @Content(examples = @ExampleObject(name = "one check", value = CheckExamples.LISTED)))
  public Page<NetContentsCheck> list(
      @PathParam("lot") String lot,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        checking.list(lot, page.after(UUID::fromString).orElse(null), page.limit() + 1),
        check -> check.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One net contents check, as it was answered")
  @APIResponse(
      responseCode = "200",
      description = "The check",
      content =
          @Content(
              schema = @Schema(implementation = NetContentsCheck.class),
              examples = @ExampleObject(name = "twelve pints", value = CheckExamples.ANSWERED)))
  public NetContentsCheck one(@PathParam("lot") String lot, @PathParam("id") UUID id) {
    return checking.at(lot, id);
  }
}
