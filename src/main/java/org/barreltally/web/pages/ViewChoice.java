package org.barreltally.web.pages;

import io.smallrye.common.annotation.Blocking;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.barreltally.web.access.LocalPath;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The viewer chooses language and units; the browser keeps them for a year. */
@Path("/view")
@Blocking
public class ViewChoice {

  private static final int SECONDS_OF_A_YEAR = 31_536_000;

  @POST
  @Operation(hidden = true)
  public Response choose(
      @FormParam("language") String language,
      @FormParam("units") String units,
      @FormParam("to") String to) {
    String chosen = Viewer.language(language).code() + ("metric".equals(units) ? ".metric" : ".us");
    return Response.seeOther(URI.create(LocalPath.of(to)))
        .cookie(
            new NewCookie.Builder(Viewer.COOKIE)
                .value(chosen)
                .path("/")
                .maxAge(SECONDS_OF_A_YEAR)
                .httpOnly(true)
                .sameSite(NewCookie.SameSite.LAX)
                .build())
        .build();
  }
}
