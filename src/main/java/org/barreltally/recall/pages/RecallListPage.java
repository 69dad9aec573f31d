package org.barreltally.recall.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barreltally.recall.rest.RecallsApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Recalls and rehearsals, the newest first. */
@Path("/recalls")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class RecallListPage implements MenuEntry {

  private static final List<Column<RecallsApi.Listed>> COLUMNS =
      List.of(
          Column.by("began", RecallsApi.Listed::startedAt),
          Column.by("lot", RecallsApi.Listed::lot),
          Column.by("state", RecallsApi.Listed::state),
          Column.by("lots", RecallsApi.Listed::lots));

  @CheckedTemplate(basePath = "recalls")
  static class Templates {
    static native TemplateInstance list(Listing<RecallsApi.Listed> list);
  }

  private final RecallsApi api;

  @Inject
  RecallListPage(RecallsApi api) {
    this.api = api;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    List<RecallsApi.Listed> newestFirst = new ArrayList<>(WholeList.of(api::list));
    Collections.reverse(newestFirst);
    return Templates.list(Listing.of(newestFirst, COLUMNS, uri));
  }

  @Override
  public String path() {
    return "/recalls";
  }

  @Override
  public String words() {
    return "recalls.title";
  }

  @Override
  public Part part() {
    return Part.YEAR;
  }

  @Override
  public int order() {
    return 40;
  }
}
