package org.barreltally.errands.pages;

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
import java.util.List;
import java.util.UUID;
import org.barreltally.errands.Errand;
import org.barreltally.errands.ErrandKind;
import org.barreltally.errands.Errands;
import org.barreltally.errands.Why;
import org.barreltally.errands.rest.ErrandView;
import org.barreltally.errands.rest.ErrandsApi;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Long work: asked for by forms that stand on other pages, left, and found again here. */
@Path("/errands")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ErrandPages implements MenuEntry {

  /** How soon the page of work that is not done yet is loaded again. */
  private static final int SECONDS_BETWEEN_LOOKS = 2;

  @CheckedTemplate(basePath = "errands")
  static class Templates {
    static native TemplateInstance list(Listing<ErrandView> list, Form form);

    static native TemplateInstance one(ErrandView errand, boolean open, Why why);
  }

  private static final List<Column<ErrandView>> COLUMNS =
      List.of(
          Column.by("asked", ErrandView::askedAt),
          Column.by("kind", ErrandView::kind),
          Column.by("state", ErrandView::state));

  private final ErrandsApi api;
  private final Errands errands;
  private final Forms forms;

  @Context UriInfo uri;

  @Inject
  ErrandPages(ErrandsApi api, Errands errands, Forms forms) {
    this.api = api;
    this.errands = errands;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return page(Form.blank());
  }

  private TemplateInstance page(Form form) {
    return Templates.list(Listing.of(WholeList.of(api::list), COLUMNS, uri), form);
  }

  @GET
  @Path("/{id}")
  @Operation(hidden = true)
  public Response one(@PathParam("id") UUID id) {
    // read once: what the page says and whether it looks again are of one moment
    Errand errand = errands.at(id);
    boolean open = errand.isOpen();
    Response.ResponseBuilder page =
        Response.ok(Templates.one(ErrandView.of(errand), open, errand.problem()));
    return open ? page.header("Refresh", SECONDS_BETWEEN_LOOKS).build() : page.build();
  }

  @POST
  @Path("/{kind}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response ask(@PathParam("kind") String kind, MultivaluedMap<String, String> said) {
    return asked(errands.kind(kind), said);
  }

  private <T> Response asked(ErrandKind<T> kind, MultivaluedMap<String, String> said) {
    return forms.take(
        said, kind.record(), (key, record) -> address(api.ask(kind, key, record)), this::page);
  }

  /** The page that says how far work is that was just taken. */
  public static URI address(Response taken) {
    return URI.create("/errands/" + ReadAnew.identity(taken.getLocation()));
  }

  @Override
  public String path() {
    return "/errands";
  }

  @Override
  public String words() {
    return "errands.title";
  }

  @Override
  public Part part() {
    return Part.TODAY;
  }

  @Override
  public int order() {
    return 30;
  }
}
