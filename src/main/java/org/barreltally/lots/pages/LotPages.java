package org.barreltally.lots.pages;

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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barreltally.lots.rest.LotView;
import org.barreltally.lots.rest.LotsApi;
import org.barreltally.measure.ColorClass;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The lots. */
@Path("/lots")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class LotPages implements MenuEntry {

  private static final List<Column<LotView>> COLUMNS =
      List.of(
          Column.by("lot", LotView::lot),
          Column.by("kind", LotView::kind),
          Column.by("made", LotView::madeOn),
          Column.by("grade", LotView::grade),
          Column.by("brix", LotView::brix));

  @CheckedTemplate(basePath = "lots")
  static class Templates {
    static native TemplateInstance list(Listing<LotView> list, Form asked, List<Choice> grades);
  }

  private final LotsApi api;

  @Inject
  LotPages(LotsApi api) {
    this.api = api;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("kind") String kind,
      @QueryParam("grade") String grade,
      @QueryParam("held") String held,
      @Context UriInfo uri) {
    List<LotView> lots =
        new ArrayList<>(
            WholeList.of(
                (limit, after) -> api.list(blank(kind), blank(grade), blank(held), limit, after)));
    lots.sort(Comparator.comparing(LotView::madeOn).thenComparing(LotView::lot).reversed());
    return Templates.list(
        Listing.of(lots, COLUMNS, uri),
        Form.with("kind", kind, "grade", grade, "held", held),
        Choice.of(ColorClass.values(), "common.grade"));
  }

  private static String blank(String text) {
    return text == null || text.isBlank() ? null : text;
  }

  @Override
  public String path() {
    return "/lots";
  }

  @Override
  public String words() {
    return "lots.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 50;
  }
}
