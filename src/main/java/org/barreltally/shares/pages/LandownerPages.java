package org.barreltally.shares.pages;

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
import org.barreltally.shares.rest.OwedApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The landowners: their leases and what is still owed. */
@Path("/landowners")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class LandownerPages implements MenuEntry {

  private static final List<Column<OwedApi.Owed>> COLUMNS =
      List.of(
          Column.by("landowner", OwedApi.Owed::landowner),
          Column.by("bush", OwedApi.Owed::bush),
          Column.by("season", OwedApi.Owed::season),
          Column.by("owed", lease -> lease.owed().amount()),
          Column.by("delivered", lease -> lease.delivered().amount()),
          Column.by("left", lease -> lease.left().amount()));

  @CheckedTemplate(basePath = "shares")
  static class Templates {
    static native TemplateInstance landowners(
        Listing<OwedApi.Owed> list, Form asked, List<Choice> states);
  }

  private final OwedApi owed;

  @Inject
  LandownerPages(OwedApi owed) {
    this.owed = owed;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("season") String season,
      @QueryParam("landowner") String landowner,
      @QueryParam("open") String open,
      @Context UriInfo uri) {
    List<OwedApi.Owed> all =
        WholeList.of(
            (limit, after) ->
                owed.list(blank(season), blank(landowner), blank(open), limit, after));
    return Templates.landowners(
        Listing.of(all, COLUMNS, uri),
        Form.with("season", season, "landowner", landowner, "open", open),
        List.of(
            new Choice("true", Words.of("shares.open.true")),
            new Choice("false", Words.of("shares.open.false"))));
  }

  private static String blank(String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }

  @Override
  public String path() {
    return "/landowners";
  }

  @Override
  public String words() {
    return "shares.landowners";
  }

  @Override
  public Part part() {
    return Part.TREES;
  }

  @Override
  public int order() {
    return 10;
  }
}
