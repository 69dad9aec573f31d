package org.barreltally.supplies.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.barreltally.supplies.rest.SuppliesApi;
import org.barreltally.supplies.rest.SupplyView;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars, caps, labels and cartons: what is on hand and what runs low. */
@Path("/supplies")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SupplyPages implements MenuEntry {

  private static final List<Column<SupplyView>> COLUMNS =
      List.of(
          Column.by("code", SupplyView::code),
          Column.by("name", SupplyView::name),
          Column.by("kind", SupplyView::kind),
          Column.by("on-hand", SupplyView::onHand));

  @CheckedTemplate(basePath = "supplies")
  static class Templates {
    static native TemplateInstance list(Listing<SupplyView> list, Form asked);
  }

  private final SuppliesApi api;

  @Inject
  SupplyPages(SuppliesApi api) {
    this.api = api;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@QueryParam("low") String low, @Context UriInfo uri) {
    List<SupplyView> all =
        WholeList.of(api::list).stream()
            .filter(supply -> !"yes".equals(low) || supply.low())
            .toList();
    return Templates.list(Listing.of(all, COLUMNS, uri), Form.with("low", low));
  }

  @Override
  public String path() {
    return "/supplies";
  }

  @Override
  public String words() {
    return "supplies.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 60;
  }
}
