package org.barreltally.barrels.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.barrels.rest.BarrelRequests;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.barrels.rest.VesselsApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Vessels that keep heels, and the washing of any vessel. */
@Path("/vessels")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class VesselPages {

  private static final List<Column<BarrelView>> COLUMNS =
      List.of(
          Column.by("tag", BarrelView::tag),
          Column.by("lot", BarrelView::lot),
          Column.by("grade", BarrelView::grade),
          Column.by("filled", BarrelView::filledOn),
          Column.by("weight", vessel -> vessel.mass().value()));

  @CheckedTemplate(basePath = "barrels")
  static class Templates {
    static native TemplateInstance vessels(Listing<BarrelView> list);

    static native TemplateInstance wash(BarrelView vessel, Form form, LocalDate today);
  }

  private final VesselsApi api;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  VesselPages(VesselsApi api, Forms forms, PageFarm farm) {
    this.api = api;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return Templates.vessels(Listing.of(WholeList.of(api::list), COLUMNS, uri));
  }

  @GET
  @Path("/{tag}/wash")
  @Operation(hidden = true)
  public TemplateInstance wash(@PathParam("tag") String tag) {
    return Templates.wash(api.at(tag), Form.blank(), farm.today());
  }

  @POST
  @Path("/{tag}/wash")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response washed(@PathParam("tag") String tag, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        BarrelRequests.Wash.class,
        (key, washing) -> {
          api.wash(tag, key, washing);
          return URI.create("/vessels");
        },
        form -> Templates.wash(api.at(tag), form, farm.today()));
  }
}
