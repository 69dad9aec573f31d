package org.barreltally.sugarbush.boiling.pages;

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
import org.barreltally.sugarbush.boiling.rest.BoilView;
import org.barreltally.sugarbush.boiling.rest.BoilsApi;
import org.barreltally.sugarbush.boiling.rest.DrawOffTemperatureView;
import org.barreltally.sugarbush.boiling.rest.SeasonView;
import org.barreltally.sugarbush.boiling.rest.SugarhouseApi;
import org.barreltally.web.Page;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.MenuEntry;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The sugarhouse: today's draw-off temperature, tanks, boils, and what the season yields. */
@Path("/sugarhouse")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SugarhousePage implements MenuEntry {

  @CheckedTemplate(basePath = "sugarhouse")
  static class Templates {
    static native TemplateInstance home(
        SeasonView season,
        SugarhouseApi.Tanks tanks,
        Page<BoilView> boils,
        Form asked,
        DrawOffTemperatureView today);
  }

  private final SugarhouseApi house;
  private final BoilsApi boils;
  private final Forms forms;

  @Inject
  SugarhousePage(SugarhouseApi house, BoilsApi boils, Forms forms) {
    this.house = house;
    this.boils = boils;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(
      @QueryParam("season") String season,
      @QueryParam("after") String after,
      @Context UriInfo uri) {
    String year = season == null || season.isBlank() ? null : season;
    Form asked = forms.form(uri.getQueryParameters());
    DrawOffTemperatureView today = null;
    try {
      today = drawOff(asked);
    } catch (RuntimeException refusal) {
      asked = forms.refused(uri.getQueryParameters(), refusal);
    }
    return Templates.home(
        house.season(year), house.tanks(year), boils.list(year, "50", after), asked, today);
  }

  private DrawOffTemperatureView drawOff(Form asked) {
    String pressure = number(asked, "pressure");
    String water = number(asked, "water");
    return pressure == null && water == null
        ? null
        : house.drawOffTemperature(
            pressure,
            asked.value("pressure.unit"),
            water,
            asked.value("water.unit"),
            number(asked, "brix"));
  }

  private static String number(Form asked, String field) {
    String typed = asked.value(field).replace(',', '.');
    return typed.isEmpty() ? null : typed;
  }

  @Override
  public String path() {
    return "/sugarhouse";
  }

  @Override
  public String words() {
    return "sugarhouse.title";
  }

  @Override
  public MenuEntry.Part part() {
    return MenuEntry.Part.TREES;
  }

  @Override
  public int order() {
    return 10;
  }
}
