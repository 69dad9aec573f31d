package org.barreltally.sugarbush.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.barreltally.containers.Containers;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.sugarbush.Landowner;
import org.barreltally.sugarbush.rest.LandownersApi;
import org.barreltally.sugarbush.rest.LeasesApi;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A lease is agreed. */
@Path("/leases/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NewLeasePage {

  private static final int CHARGES = 3;

  @CheckedTemplate(basePath = "sugarbush")
  static class Templates {
    static native TemplateInstance newLease(
        Form form, LeaseChoices choices, List<Landowner> landowners, int season, int rows);
  }

  private final LeasesApi leases;
  private final LandownersApi landowners;
  private final Containers containers;
  private final PriceListsApi lists;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  NewLeasePage(
      LeasesApi leases,
      LandownersApi landowners,
      Containers containers,
      PriceListsApi lists,
      PageFarm farm,
      Forms forms) {
    this.leases = leases;
    this.landowners = landowners;
    this.containers = containers;
    this.lists = lists;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return shown(Form.blank(), CHARGES);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response agreed(MultivaluedMap<String, String> said) {
    if (said.containsKey("more")) {
      Form form = forms.form(said);
      int rows = form.rows("containerCharges", 0).size() + CHARGES;
      return Response.ok(shown(form, rows)).build();
    }
    return forms.take(
        said,
        LeasesApi.NewLease.class,
        (key, lease) -> {
          Response agreed = leases.agree(key, lease);
          return URI.create("/leases/" + ReadAnew.identity(agreed.getLocation()));
        },
        form -> shown(form, 1));
  }

  private TemplateInstance shown(Form form, int rows) {
    return Templates.newLease(
        form,
        LeaseChoices.of(containers, lists, farm),
        WholeList.of(landowners::list),
        farm.today().getYear(),
        rows);
  }
}
