package org.barreltally.gifts.pages;

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
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.barreltally.containers.Container;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.gifts.PlannedCanning;
import org.barreltally.gifts.rest.PlannedCanningApi;
import org.barreltally.measure.ColorClass;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.Show;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What is meant to be canned, counted in the outlook of gift orders and promised to nobody. */
@Path("/planned-canning")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class PlannedCanningPage implements MenuEntry {

  private static final URI HERE = URI.create("/planned-canning");

  /** Nothing needs to be said. */
  public record Nothing() {}

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance planned(
        List<PlannedCanning> plans, Form form, List<Choice> sizes, List<Choice> grades);
  }

  private final PlannedCanningApi api;
  private final ContainersApi containers;
  private final Forms forms;

  @Inject
  PlannedCanningPage(PlannedCanningApi api, ContainersApi containers, Forms forms) {
    this.api = api;
    this.containers = containers;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    return page(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response plan(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        PlannedCanning.class,
        (key, plan) -> {
          api.plan(key, plan);
          return HERE;
        },
        this::page);
  }

  @POST
  @Path("/{id}/withdraw")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response withdraw(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          api.withdraw(id);
          return HERE;
        },
        this::page);
  }

  private TemplateInstance page(Form form) {
    List<Choice> sizes =
        WholeList.of(containers::list).stream()
            .map(Container::code)
            .map(code -> new Choice(code, code))
            .toList();
    List<Choice> grades =
        Arrays.stream(ColorClass.values())
            .map(grade -> new Choice(grade.code(), Show.grade(grade)))
            .toList();
    return Templates.planned(api.list().items(), form, sizes, grades);
  }

  @Override
  public String path() {
    return HERE.getPath();
  }

  @Override
  public String words() {
    return "gifts.planned-title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 25;
  }
}
