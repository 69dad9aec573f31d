package org.barreltally.sugarbush.boiling.pages;

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
import org.barreltally.sugarbush.boiling.MakeConcentrate;
import org.barreltally.sugarbush.boiling.rest.ConcentrateView;
import org.barreltally.sugarbush.boiling.rest.ConcentratesApi;
import org.barreltally.sugarbush.boiling.rest.SugarhouseApi;
import org.barreltally.sugarbush.rest.BushesApi;
import org.barreltally.web.Because;
import org.barreltally.web.Page;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.HiddenId;
import org.barreltally.web.pages.SeveralForms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Concentrate that a membrane made, and entering more. */
@Path("/sugarhouse/concentrate")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ConcentratePage {

  @CheckedTemplate(basePath = "sugarhouse")
  static class Templates {
    static native TemplateInstance concentrate(
        Page<ConcentrateView> list, SeveralForms forms, LogChoices choices);
  }

  private final ConcentratesApi log;
  private final BushesApi bushes;
  private final SugarhouseApi house;
  private final Forms forms;

  @Inject
  ConcentratePage(ConcentratesApi log, BushesApi bushes, SugarhouseApi house, Forms forms) {
    this.log = log;
    this.bushes = bushes;
    this.house = house;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@QueryParam("after") String after) {
    return shown(SeveralForms.blank(), after);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response entered(MultivaluedMap<String, String> said) {
    if ("reverse".equals(said.getFirst(SeveralForms.FIELD))) {
      return forms.take(
          said,
          Because.class,
          (key, why) -> {
            log.reverse(HiddenId.read(said.getFirst("entry")), key, why);
            return URI.create("/sugarhouse/concentrate");
          },
          form -> shown(SeveralForms.with("reverse", form), null));
    }
    return forms.take(
        said,
        MakeConcentrate.class,
        (key, entry) -> {
          log.make(key, entry);
          return URI.create("/sugarhouse/concentrate");
        },
        form -> shown(SeveralForms.with("enter", form), null));
  }

  private TemplateInstance shown(SeveralForms shown, String after) {
    return Templates.concentrate(log.list(null, "50", after), shown, LogChoices.of(bushes, house));
  }
}
