package org.barreltally.cost.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.barreltally.cost.Cost;
import org.barreltally.cost.rest.CostsApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What was spent, by the year it is booked in. */
@Path("/costs")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "bookkeeper"})
@Blocking
public class CostListPage implements MenuEntry {

  private static final List<Column<Cost>> COLUMNS =
      List.of(
          Column.by("on", Cost::on),
          Column.by("kind", cost -> cost.kind().code()),
          Column.by("amount", cost -> cost.amount().amount()));

  @CheckedTemplate(basePath = "costs")
  static class Templates {
    static native TemplateInstance list(Listing<Cost> list, String year);
  }

  private final CostsApi api;

  @Inject
  CostListPage(CostsApi api) {
    this.api = api;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@QueryParam("year") String year, @Context UriInfo uri) {
    String asked = year == null || year.isBlank() ? null : year.strip();
    return Templates.list(
        Listing.of(WholeList.of((limit, after) -> api.list(asked, limit, after)), COLUMNS, uri),
        asked);
  }

  @Override
  @PermitAll
  public String path() {
    return "/costs";
  }

  @Override
  @PermitAll
  public String words() {
    return "costs.title";
  }

  @Override
  @PermitAll
  public Part part() {
    return Part.YEAR;
  }

  @Override
  @PermitAll
  public int order() {
    return 20;
  }
}
