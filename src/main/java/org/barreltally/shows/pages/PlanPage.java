package org.barreltally.shows.pages;

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
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.shows.plan.PlanQuestion;
import org.barreltally.shows.plan.ShowPlan;
import org.barreltally.shows.plan.rest.PlanApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What to take to a show and why. */
@Path("/shows/{id}/plan")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class PlanPage {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance plan(
        ShowDetails details,
        ShowPlan plan,
        Form form,
        Form promise,
        List<Choice> sizes,
        List<Choice> grades,
        String currency);
  }

  private final ShowsApi api;
  private final PlanApi plans;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  PlanPage(ShowsApi api, PlanApi plans, Forms forms, BookingDesk desk) {
    this.api = api;
    this.plans = plans;
    this.forms = forms;
    this.desk = desk;
  }

  /** The plan with nothing said. */
  @GET
  @Operation(hidden = true)
  public Response plan(@PathParam("id") UUID id) {
    try {
      return Response.ok(page(id, plans.plan(id, null), Form.blank())).build();
    } catch (RuntimeException refusal) {
      return Response.ok(page(id, null, forms.refused(new MultivaluedHashMap<>(), refusal)))
          .build();
    }
  }

  /** The plan with something said. It stores nothing, so the answer is the page itself. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response asked(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    try {
      ShowPlan plan = plans.plan(id, forms.peek(said, PlanQuestion.class));
      return Response.ok(page(id, plan, forms.form(said))).build();
    } catch (RuntimeException refusal) {
      Form refused = forms.refused(said, refusal);
      return Response.status(refused.refusal().status()).entity(page(id, null, refused)).build();
    }
  }

  private TemplateInstance page(UUID id, ShowPlan plan, Form form) {
    return Templates.plan(
        details(id), plan, form, Form.blank(), desk.sizes(), grades(), desk.currency());
  }

  private static List<Choice> grades() {
    return Choice.of(ColorClass.values(), "common.grade");
  }

  private ShowDetails details(UUID id) {
    return (ShowDetails) api.at(id).getEntity();
  }
}
