package org.barreltally.sales.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.barreltally.sales.Conflict;
import org.barreltally.sales.rest.SalesApi;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Sale ids that came again with other content. */
@Path("/sales/conflicts")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ConflictsPage {

  @CheckedTemplate(basePath = "sales")
  static class Templates {
    static native TemplateInstance conflicts(List<Conflict> conflicts);
  }

  private final SalesApi sales;

  @Inject
  ConflictsPage(SalesApi sales) {
    this.sales = sales;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance conflicts(@QueryParam("place") String place) {
    return Templates.conflicts(
        WholeList.of((limit, after) -> sales.conflicts(place, limit, after)));
  }
}
