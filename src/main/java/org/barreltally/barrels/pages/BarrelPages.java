package org.barreltally.barrels.pages;

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
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.Material;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.barrels.rest.BarrelsApi;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The barrels. */
@Path("/barrels")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class BarrelPages implements MenuEntry {

  private static final List<Column<BarrelView>> COLUMNS =
      List.of(
          Column.by("tag", BarrelView::tag),
          Column.by("lot", BarrelView::lot),
          Column.by("grade", BarrelView::grade),
          Column.by("state", BarrelView::state),
          Column.by("filled", BarrelView::filledOn),
          Column.by("weight", barrel -> barrel.mass().value()),
          Column.by("brix", BarrelView::brix));

  @CheckedTemplate(basePath = "barrels")
  static class Templates {
    static native TemplateInstance list(Listing<BarrelView> list, Form asked, Choices choices);
  }

  /** What the forms offer. */
  public record Choices(
      List<Choice> grades, List<Choice> states, List<Choice> materials, List<Choice> tastes) {

    static Choices now() {
      return new Choices(
          Choice.of(ColorClass.values(), "common.grade"),
          Choice.of(BarrelState.values(), "barrels.state"),
          Choice.of(Material.values(), "barrels.material"),
          Choice.of(Taste.values(), "common.taste"));
    }
  }

  private final BarrelsApi barrels;

  @Inject
  BarrelPages(BarrelsApi barrels) {
    this.barrels = barrels;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("grade") String grade,
      @QueryParam("state") String state,
      @QueryParam("season") String season,
      @Context UriInfo uri) {
    List<BarrelView> all =
        WholeList.of(
            (limit, after) ->
                barrels.list(blank(grade), state(state), blank(season), limit, after));
    if (blank(state) == null) {
      all = all.stream().filter(barrel -> barrel.state() != BarrelState.DRAINED).toList();
    }
    return Templates.list(
        Listing.of(all, COLUMNS, uri),
        Form.with("grade", grade, "state", state, "season", season),
        Choices.now());
  }

  /** Any state is asked for by name, since a list without one leaves out what is drained. */
  private static String state(String asked) {
    return "any".equals(asked) ? null : blank(asked);
  }

  private static String blank(String text) {
    return text == null || text.isBlank() ? null : text;
  }

  @Override
  public String path() {
    return "/barrels";
  }

  @Override
  public String words() {
    return "barrels.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 10;
  }
}
