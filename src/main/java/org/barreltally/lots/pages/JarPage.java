package org.barreltally.lots.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.util.regex.Pattern;
import org.barreltally.lots.PublicLots;
import org.barreltally.lots.ShownLot;
import org.barreltally.settings.FarmSettings;
import org.eclipse.microprofile.openapi.annotations.Operation;

/**
 * What anybody learns who scans a jar, if the owner shows its lot. A lot that is unknown, not shown
 * or held is answered alike, so nobody learns which there are.
 */
@Path("/")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class JarPage {

  private static final Pattern CODE = Pattern.compile("[A-Za-z0-9-]{1,20}");

  /** What a jar tells, and who made it. */
  public record Told(String maker, ShownLot shown) {}

  @CheckedTemplate(basePath = "lots")
  static class Templates {
    static native TemplateInstance jar(Told told);

    static native TemplateInstance tooOften();
  }

  private final PublicLots shown;
  private final FarmSettings settings;
  private final Visitors visitors;

  @Inject
  JarPage(PublicLots shown, FarmSettings settings, Visitors visitors) {
    this.shown = shown;
    this.settings = settings;
    this.visitors = visitors;
  }

  @GET
  @Path("jar/{lot}")
  @Operation(hidden = true)
  public Response show(@PathParam("lot") String code, HttpServerRequest request) {
    if (!visitors.mayAsk(request.remoteAddress().hostAddress())) {
      return Response.status(429).header("Retry-After", 60).entity(Templates.tooOften()).build();
    }
    if (!CODE.matcher(code).matches()) {
      throw new NotFoundException();
    }
    ShownLot lot = shown.seen(code).orElseThrow(NotFoundException::new);
    return Response.ok(Templates.jar(new Told(settings.now().said().maker(), lot))).build();
  }

  /** Where the code on a label leads. */
  @GET
  @Path("lot/{lot}")
  @Operation(hidden = true)
  public Response scanned(@PathParam("lot") String code) {
    return Response.seeOther(UriBuilder.fromPath("/jar/{lot}").build(code)).build();
  }
}
