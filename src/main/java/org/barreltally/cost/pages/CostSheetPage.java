package org.barreltally.cost.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.cost.CostMethod;
import org.barreltally.cost.Margins;
import org.barreltally.cost.StockValue;
import org.barreltally.cost.YearCost;
import org.barreltally.cost.rest.CostMethodApi;
import org.barreltally.cost.rest.CostSheetsApi;
import org.barreltally.shows.rest.ShowView;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A year in money: what goods cost, what was earned, what stock is worth, and by which method. */
@Path("/costs/sheet")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "bookkeeper"})
@Blocking
public class CostSheetPage {

  @CheckedTemplate(basePath = "costs")
  static class Templates {
    static native TemplateInstance sheet(
        String year,
        YearCost cost,
        String by,
        List<MarginRow> margins,
        Margins.Totals totals,
        StockValue stock,
        List<Choice> methods,
        Form form);
  }

  private final CostSheetsApi api;
  private final CostMethodApi method;
  private final ShowsApi shows;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  CostSheetPage(
      CostSheetsApi api, CostMethodApi method, ShowsApi shows, PageFarm farm, Forms forms) {
    this.api = api;
    this.method = method;
    this.shows = shows;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance sheet(@QueryParam("year") String year, @QueryParam("by") String by) {
    return shown(year, by, Form.blank());
  }

  /** Chooses the year's method. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response chosen(MultivaluedMap<String, String> said) {
    String shownYear = said.getFirst("shown");
    return forms.take(
        said,
        CostMethodApi.Choose.class,
        (key, choose) -> {
          method.choose(key, choose);
          return URI.create("/costs/sheet?year=" + choose.year());
        },
        form -> shown(shownYear, null, form));
  }

  private TemplateInstance shown(String asked, String askedBy, Form form) {
    int today = farm.today().getYear();
    String year = asked == null || asked.isBlank() ? String.valueOf(today) : asked.strip();
    String by = askedBy == null || askedBy.isBlank() ? "container" : askedBy;
    YearCost cost = api.goods(year, null);
    Margins margins = api.margins(year, by);
    Map<String, String> names =
        WholeList.<ShowView>of((limit, after) -> shows.list(null, null, limit, after)).stream()
            .collect(Collectors.toMap(show -> show.id().toString(), show -> show.booking().name()));
    return Templates.sheet(
        year,
        cost,
        by,
        margins.items().stream().map(row -> MarginRow.of(row, names)).toList(),
        margins.totals(),
        api.value(cost.year() < today ? year + "-12-31" : null, null),
        Choice.of(CostMethod.values(), "costs.method"),
        form);
  }
}
