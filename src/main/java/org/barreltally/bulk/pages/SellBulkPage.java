package org.barreltally.bulk.pages;

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
import java.time.LocalDate;
import java.util.List;
import org.barreltally.barrels.rest.BarrelApi;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.bulk.SellBulk;
import org.barreltally.bulk.rest.SellBulkApi;
import org.barreltally.measure.ColorClass;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A barrel is sold whole, with our, their and the agreed figures. */
@Path("/barrels/{tag}/sell")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SellBulkPage {

  @CheckedTemplate(basePath = "bulk")
  static class Templates {
    static native TemplateInstance sell(
        BarrelView barrel, Form form, List<Choice> grades, String currency, LocalDate today);
  }

  private final SellBulkApi api;
  private final BarrelApi barrels;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  SellBulkPage(SellBulkApi api, BarrelApi barrels, Forms forms, PageFarm farm) {
    this.api = api;
    this.barrels = barrels;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance sell(@PathParam("tag") String tag) {
    return page(tag, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response sold(@PathParam("tag") String tag, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SellBulk.class,
        (key, sale) -> {
          String stored = api.sell(tag, key, null, sale).getLocation().getPath();
          return URI.create(stored.substring("/api".length()));
        },
        form -> page(tag, form));
  }

  private TemplateInstance page(String tag, Form form) {
    return Templates.sell(
        (BarrelView) barrels.at(tag).getEntity(),
        form,
        Choice.of(ColorClass.values(), "common.grade"),
        farm.currency(),
        farm.today());
  }
}
