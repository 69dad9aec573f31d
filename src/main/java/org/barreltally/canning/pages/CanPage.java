package org.barreltally.canning.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.barrels.rest.BarrelsApi;
import org.barreltally.barrels.rest.VesselsApi;
import org.barreltally.canning.CanningOrder;
import org.barreltally.canning.CanningRuns;
import org.barreltally.canning.PackSheet;
import org.barreltally.canning.rest.CanningApi;
import org.barreltally.containers.Container;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.measure.Taste;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.Show;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A run in the making: reckoned while somebody types, looked at once more, recorded. */
@Path("/canning/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class CanPage {

  /** Fill temperature a form begins with: common practice is to fill at 185 °F, 85 °C. */
  private static final Map<String, String> USUAL_FILL = Map.of("degF", "185", "degC", "85");

  private static final int SIZES_MAX = 100;

  @CheckedTemplate(basePath = "canning")
  static class Templates {
    static native TemplateInstance make(
        Form form,
        List<CanningForm.DrawRow> draws,
        List<CanningForm.FillRow> fills,
        List<Choice> tastes,
        Reckoned reckoned);

    static native TemplateInstance check(
        Form form, CanningOrder order, PackSheet sheet, ShrinkBars bars);

    static native TemplateInstance reckoning(Reckoned reckoned);
  }

  private final CanningApi api;
  private final CanningRuns runs;
  private final BarrelsApi barrels;
  private final VesselsApi vessels;
  private final ContainersApi sizes;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  CanPage(
      CanningApi api,
      CanningRuns runs,
      BarrelsApi barrels,
      VesselsApi vessels,
      ContainersApi sizes,
      Forms forms,
      PageFarm farm) {
    this.api = api;
    this.runs = runs;
    this.barrels = barrels;
    this.vessels = vessels;
    this.sizes = sizes;
    this.forms = forms;
    this.farm = farm;
  }

  /**
   * The form.
   *
   * @param from a barrel all of which is to be canned; null to choose
   */
  @GET
  @Operation(hidden = true)
  public TemplateInstance make(@QueryParam("from") String from) {
    String unit = Show.first("degF,degC");
    return page(
        Form.with(
            "on",
            farm.today(),
            "fillTemperature",
            USUAL_FILL.get(unit),
            "fillTemperature.unit",
            unit,
            "draws[0].barrel",
            from,
            "draws[0].all",
            from == null ? null : "true"),
        null);
  }

  /** Reckons the run, or shows once more what is to be recorded; records nothing. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response look(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> filledIn = CanningForm.filledIn(said);
    String what = said.getFirst("do");
    if ("change".equals(what)) {
      return Response.ok(page(forms.form(filledIn), reckon(filledIn))).build();
    }
    if ("reckon".equals(what)) {
      return Response.ok(page(forms.form(filledIn), reckon(filledIn))).build();
    }
    try {
      CanningOrder order = forms.peek(filledIn, CanningOrder.class);
      PackSheet sheet = runs.rehearse(order);
      return Response.ok(
              Templates.check(forms.form(filledIn), order, sheet, ShrinkBars.of(sheet.shrink())))
          .build();
    } catch (RuntimeException refusal) {
      Form form = forms.refused(filledIn, refusal);
      return Response.status(form.refusal().status()).entity(page(form, reckon(filledIn))).build();
    }
  }

  /** What the run comes to as it is typed so far: a part of a page. */
  @POST
  @Path("/reckoning")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public TemplateInstance reckoning(MultivaluedMap<String, String> said) {
    return Templates.reckoning(reckon(CanningForm.filledIn(said)));
  }

  @POST
  @Path("/record")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response record(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> filledIn = CanningForm.filledIn(said);
    return forms.take(
        filledIn,
        CanningOrder.class,
        (key, order) -> {
          String stored = api.run(key, order).getLocation().getPath();
          return URI.create(stored.substring("/api".length()));
        },
        form -> page(form, reckon(filledIn)));
  }

  private Reckoned reckon(MultivaluedMap<String, String> said) {
    try {
      CanningOrder order = forms.peek(said, CanningOrder.class);
      return Reckoned.of(api.whatIf(order.fills() == null ? withAllSizes(order) : order));
    } catch (RuntimeException refusal) {
      return Reckoned.not(forms.refused(said, refusal).refusal());
    }
  }

  /** Before any size is chosen, the fill marks of all of them are what a person looks for. */
  private CanningOrder withAllSizes(CanningOrder order) {
    return new CanningOrder(
        order.on(),
        order.draws(),
        order.targetBrix(),
        order.fillTemperature(),
        order.filterHoldUp(),
        order.overfill(),
        sizes().stream()
            .limit(SIZES_MAX)
            .map(size -> new CanningOrder.FillOrder(size.code(), 0, null, null))
            .toList(),
        order.heel(),
        order.transmittance(),
        order.taste(),
        order.releaseReason());
  }

  private List<Container> sizes() {
    List<Container> all = new ArrayList<>(WholeList.of(sizes::list));
    all.sort(Comparator.comparing(Container::netML).reversed());
    return all;
  }

  private TemplateInstance page(Form form, Reckoned reckoned) {
    List<BarrelView> filled =
        WholeList.of((limit, after) -> barrels.list(null, null, null, limit, after));
    return Templates.make(
        form,
        CanningForm.draws(form, filled, WholeList.of(vessels::list)),
        CanningForm.fills(form, sizes()),
        Choice.of(Taste.values(), "common.taste"),
        reckoned);
  }
}
