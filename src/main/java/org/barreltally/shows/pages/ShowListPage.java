package org.barreltally.shows.pages;

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
import org.barreltally.shows.ShowState;
import org.barreltally.shows.rest.ShowView;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** All shows, of every year. */
@Path("/shows/list")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ShowListPage {

  private static final List<Column<ShowView>> COLUMNS =
      List.of(
          Column.by("starts", show -> show.booking().starts()),
          Column.by("name", show -> show.booking().name()),
          Column.by("town", show -> show.booking().town()),
          Column.by("state", ShowView::state),
          Column.by("helper", show -> show.booking().helper()));

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance list(Listing<ShowView> list, Form asked, List<Choice> states);
  }

  private final ShowsApi api;

  @Inject
  ShowListPage(ShowsApi api) {
    this.api = api;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("year") String year, @QueryParam("state") String state, @Context UriInfo uri) {
    List<ShowView> all =
        WholeList.of((limit, after) -> api.list(blank(year), blank(state), limit, after));
    return Templates.list(
        Listing.of(all, COLUMNS, uri),
        Form.with("year", year, "state", state),
        Choice.of(ShowState.values(), "shows.state"));
  }

  private static String blank(String text) {
    return text == null || text.isBlank() ? null : text;
  }
}
