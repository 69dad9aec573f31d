package org.barreltally.lots.pages;

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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.lots.Family;
import org.barreltally.lots.rest.LotView;
import org.barreltally.lots.rest.LotsApi;
import org.barreltally.lots.rest.TraceView;
import org.barreltally.measure.Taste;
import org.barreltally.web.Because;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One lot: what it is, where it came from, where it went, and what is done to it. */
@Path("/lots/{lot}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class LotPage {

  @CheckedTemplate(basePath = "lots")
  static class Templates {
    static native TemplateInstance lot(
        LotView lot, TraceView trace, FamilyTree tree, List<Stands> jars, List<Flows> syrup);

    static native TemplateInstance hold(LotView lot, Form form);

    static native TemplateInstance grade(
        LotView lot, Form form, List<Choice> tastes, LocalDate today);
  }

  /** Jars somewhere, the place in words. */
  public record Stands(TraceView.Jars jars, String where) {}

  /** Syrup in bulk somewhere, the place in words. */
  public record Flows(TraceView.BulkSyrup syrup, String where) {}

  private final LotsApi api;
  private final Family family;
  private final PlaceNames places;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  LotPage(LotsApi api, Family family, PlaceNames places, Forms forms, PageFarm farm) {
    this.api = api;
    this.family = family;
    this.places = places;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("lot") String lot) {
    LotView view = api.at(lot);
    TraceView trace = api.trace(lot);
    Map<String, String> names = places.all();
    return Templates.lot(
        view,
        trace,
        FamilyTree.of(view.lot(), family.above(view.lot()), family.below(view.lot()), trace),
        trace.whereabouts().stream()
            .map(jars -> new Stands(jars, named(names, jars.place(), jars.recipient())))
            .toList(),
        trace.syrup().stream()
            .map(syrup -> new Flows(syrup, named(names, syrup.place(), null)))
            .toList());
  }

  private static String named(Map<String, String> names, String place, String recipient) {
    String code = place == null ? recipient : place;
    return names.getOrDefault(code, code);
  }

  @GET
  @Path("/hold")
  @Operation(hidden = true)
  public TemplateInstance hold(@PathParam("lot") String lot) {
    return Templates.hold(api.at(lot), Form.blank());
  }

  /** Holds the lot, or releases it if it is held. */
  @POST
  @Path("/hold")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response held(@PathParam("lot") String lot, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Because.class,
        (key, because) -> {
          if ("release".equals(said.getFirst("what"))) {
            api.release(lot, because);
          } else {
            api.hold(lot, because);
          }
          return address(lot);
        },
        form -> Templates.hold(api.at(lot), form));
  }

  @GET
  @Path("/grade")
  @Operation(hidden = true)
  public TemplateInstance grade(@PathParam("lot") String lot) {
    return grade(lot, Form.blank());
  }

  @POST
  @Path("/grade")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response graded(@PathParam("lot") String lot, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        LotsApi.Regrade.class,
        (key, grading) -> {
          api.regrade(lot, grading);
          return address(lot);
        },
        form -> grade(lot, form));
  }

  private TemplateInstance grade(String lot, Form form) {
    return Templates.grade(
        api.at(lot), form, Choice.of(Taste.values(), "common.taste"), farm.today());
  }

  private static URI address(String lot) {
    return UriBuilder.fromPath("/lots/{lot}").build(lot);
  }
}
