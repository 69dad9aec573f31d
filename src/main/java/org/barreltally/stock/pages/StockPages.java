package org.barreltally.stock.pages;

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
import java.util.Map;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.measure.ColorClass;
import org.barreltally.stock.StockRow;
import org.barreltally.stock.rest.StockApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What stands where: jars by place, size, grade and lot, and vessels with syrup. */
@Path("/stock")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class StockPages implements MenuEntry {

  private static final List<Column<StockRow>> COLUMNS =
      List.of(
          Column.by("place", StockRow::place),
          Column.by("size", StockRow::container),
          Column.by("grade", StockRow::grade),
          Column.by("lot", StockRow::lot),
          Column.by("jars", StockRow::onHand));

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    static native TemplateInstance list(
        Listing<JarRow> jars, Totals totals, List<VesselRow> vessels, Form asked, Choices choices);
  }

  /** Jars of one lot and size at a place. */
  public record JarRow(StockRow row, String place) {}

  /** A vessel with syrup. */
  public record VesselRow(StockRow row, String place) {}

  /** What the forms offer. */
  public record Choices(List<Choice> places, List<Choice> sizes, List<Choice> grades) {}

  private final StockApi api;
  private final ContainersApi containers;
  private final PlaceNames places;

  @Inject
  StockPages(StockApi api, ContainersApi containers, PlaceNames places) {
    this.api = api;
    this.containers = containers;
    this.places = places;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("place") String place,
      @QueryParam("container") String container,
      @QueryParam("grade") String grade,
      @QueryParam("lot") String lot,
      @Context UriInfo uri) {
    List<StockRow> rows =
        WholeList.of(
            (limit, after) ->
                api.list(blank(place), blank(container), blank(grade), blank(lot), limit, after));
    List<StockRow> jars = rows.stream().filter(row -> row.container() != null).toList();
    Map<String, String> names = places.all();
    return Templates.list(
        Listing.of(jars, COLUMNS, uri)
            .as(row -> new JarRow(row, names.getOrDefault(row.place(), row.place()))),
        Totals.of(jars),
        rows.stream()
            .filter(row -> row.container() == null)
            .map(row -> new VesselRow(row, names.getOrDefault(row.place(), row.place())))
            .toList(),
        Form.with("place", place, "container", container, "grade", grade, "lot", lot),
        choices());
  }

  private Choices choices() {
    return new Choices(
        places.own(), sizes(containers), Choice.of(ColorClass.values(), "common.grade"));
  }

  /** The sizes to choose from, with their names. */
  static List<Choice> sizes(ContainersApi containers) {
    return WholeList.of(containers::list).stream()
        .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
        .toList();
  }

  private static String blank(String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }

  @Override
  public String path() {
    return "/stock";
  }

  @Override
  public String words() {
    return "stock.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 30;
  }
}
