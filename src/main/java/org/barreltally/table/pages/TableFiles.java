package org.barreltally.table.pages;

import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Files of the phone's application that are made when asked; the others lie there as they are. */
@Path("/table")
@Blocking
public class TableFiles {

  private final TableShell shell;

  @Inject
  TableFiles(TableShell shell) {
    this.shell = shell;
  }

  /** The worker; a browser asks for it anew to learn of a new release. */
  /** The application lies in a folder of its own. */
  @GET
  @Operation(hidden = true)
  public Response folder() {
    return Response.seeOther(URI.create("/table/")).build();
  }

  @GET
  @Path("/sw.js")
  @Produces("text/javascript; charset=utf-8")
  @Operation(hidden = true)
  public Response worker() {
    return Response.ok(shell.script()).header("Cache-Control", "no-cache").build();
  }

  @GET
  @Path("/words/{language}.json")
  @Produces("application/json; charset=utf-8")
  @Operation(hidden = true)
  public Response words(@PathParam("language") String language) {
    Locale locale = "fr".equals(language) ? Locale.FRENCH : Locale.ENGLISH;
    return Response.ok(shell.words(locale)).header("Cache-Control", "no-cache").build();
  }
}
