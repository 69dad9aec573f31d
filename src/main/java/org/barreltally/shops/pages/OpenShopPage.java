package org.barreltally.shops.pages;

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
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.shops.OpenShop;
import org.barreltally.shops.rest.ShopsApi;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A shop is made known. */
@Path("/shops/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class OpenShopPage {

  @CheckedTemplate(basePath = "shops")
  static class Templates {
    static native TemplateInstance open(Form form, ShopChoices choices);
  }

  private final ShopsApi shops;
  private final PriceListsApi lists;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  OpenShopPage(ShopsApi shops, PriceListsApi lists, PageFarm farm, Forms forms) {
    this.shops = shops;
    this.lists = lists;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return shown(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response opened(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        OpenShop.class,
        (key, shop) -> {
          Response opened = shops.open(key, shop);
          return URI.create("/shops/" + ReadAnew.identity(opened.getLocation()));
        },
        this::shown);
  }

  private TemplateInstance shown(Form form) {
    return Templates.open(form, ShopChoices.of(lists, farm));
  }
}
