package org.barreltally.shops.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.util.UUID;
import org.barreltally.ledger.rest.MovementsApi;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.shops.AgreeTerms;
import org.barreltally.shops.Delivery;
import org.barreltally.shops.MissingRule;
import org.barreltally.shops.PayShop;
import org.barreltally.shops.ShelfCount;
import org.barreltally.shops.Shop;
import org.barreltally.shops.Statement;
import org.barreltally.shops.rest.ShopShelfApi;
import org.barreltally.shops.rest.ShopsApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.SeveralForms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One shop: its terms, what stands there, what it owes and paid. */
@Path("/shops/{code}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ShopPage {

  @CheckedTemplate(basePath = "shops")
  static class Templates {
    static native TemplateInstance shop(
        Shop shop, Statement statement, Form asked, ShopChoices choices, SeveralForms forms);
  }

  private final ShopsApi shops;
  private final ShopShelfApi shelves;
  private final MovementsApi movements;
  private final PriceListsApi lists;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  ShopPage(
      ShopsApi shops,
      ShopShelfApi shelves,
      MovementsApi movements,
      PriceListsApi lists,
      PageFarm farm,
      Forms forms) {
    this.shops = shops;
    this.shelves = shelves;
    this.movements = movements;
    this.lists = lists;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(
      @PathParam("code") String code,
      @QueryParam("from") String from,
      @QueryParam("to") String to) {
    return shown(code, Form.with("from", blank(from), "to", blank(to)), SeveralForms.blank());
  }

  private static String blank(String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response act(@PathParam("code") String code, MultivaluedMap<String, String> said) {
    return switch (String.valueOf(said.getFirst(SeveralForms.FIELD))) {
      case "terms" ->
          take(code, said, AgreeTerms.class, (key, terms) -> shops.agree(code, key, terms));
      case "details" ->
          take(code, said, ShopsApi.Details.class, (key, details) -> shops.describe(code, details));
      case "pay" -> take(code, said, PayShop.class, (key, paid) -> shelves.pay(code, key, paid));
      case "reverse" -> reversed(code, said);
      default -> throw new BadRequestException();
    };
  }

  /** Takes a delivery, fetching or count of this shop back. */
  private Response reversed(String code, MultivaluedMap<String, String> said) {
    String movement = said.getFirst("movement");
    Statement all = shelves.statement(code, null, null);
    boolean its =
        all.deliveries().stream().map(Delivery::movement).anyMatch(id -> is(id, movement))
            || all.counts().stream().map(ShelfCount::movement).anyMatch(id -> is(id, movement));
    if (!its) {
      throw new BadRequestException();
    }
    return take(
        code,
        said,
        MovementsApi.Reversal.class,
        (key, why) -> movements.reverse(UUID.fromString(movement), key, why));
  }

  private static boolean is(UUID id, String text) {
    return id != null && id.toString().equals(text);
  }

  private interface Act<T> {
    void does(String key, T said);
  }

  private <T> Response take(
      String code, MultivaluedMap<String, String> said, Class<T> record, Act<T> act) {
    String what = said.getFirst(SeveralForms.FIELD);
    return forms.take(
        said,
        record,
        (key, read) -> {
          act.does(key, read);
          return UriBuilder.fromPath("/shops/{code}").build(code);
        },
        form -> shown(code, Form.blank(), SeveralForms.with(what, form)));
  }

  private TemplateInstance shown(String code, Form asked, SeveralForms several) {
    Shop shop = shops.one(code);
    several.beginning("details", Form.with("details", shop.details()));
    several.beginning(
        "terms",
        Form.with(
            "commissionPercent", shop.terms().commissionPercent(),
            "missing", shop.terms().missing(),
            "shopBearsPercent",
                shop.terms().missing() == MissingRule.SPLIT
                    ? shop.terms().shopBearsPercent()
                    : null,
            "priceList", shop.terms().priceList()));
    return Templates.shop(
        shop,
        shelves.statement(code, value(asked, "from"), value(asked, "to")),
        asked,
        ShopChoices.of(lists, farm),
        several);
  }

  private static String value(Form asked, String field) {
    return blank(asked.value(field));
  }
}
