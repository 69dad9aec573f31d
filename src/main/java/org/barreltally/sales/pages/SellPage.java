package org.barreltally.sales.pages;

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
import org.barreltally.ledger.Place;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Places;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.TaxRate;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.pricing.rest.TaxRatesApi;
import org.barreltally.sales.Channel;
import org.barreltally.sales.away.SellAway;
import org.barreltally.sales.rest.AwaySalesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars are sold at the farm gate, by post or wholesale. */
@Path("/sales/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SellPage {

  private static final int MOST = 500;

  @CheckedTemplate(basePath = "sales")
  static class Templates {
    static native TemplateInstance sell(Form form, Offer offer, String currency);
  }

  /** What the form offers. */
  public record Offer(
      List<Choice> channels,
      List<Choice> sizes,
      List<Choice> grades,
      List<Choice> rooms,
      List<Choice> priceLists,
      List<String> taxPlaces) {}

  private final AwaySalesApi api;
  private final PriceListsApi priceLists;
  private final TaxRatesApi taxRates;
  private final Containers containers;
  private final Places places;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  SellPage(
      AwaySalesApi api,
      PriceListsApi priceLists,
      TaxRatesApi taxRates,
      Containers containers,
      Places places,
      Forms forms,
      PageFarm farm) {
    this.api = api;
    this.priceLists = priceLists;
    this.taxRates = taxRates;
    this.containers = containers;
    this.places = places;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return page(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response sold(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SellAway.class,
        (key, sale) -> {
          String path = api.sell(key, sale).getLocation().getPath();
          return URI.create("/sales" + path.substring(path.lastIndexOf('/')));
        },
        this::page);
  }

  private TemplateInstance page(Form form) {
    return Templates.sell(form, offer(), farm.currency());
  }

  private Offer offer() {
    return new Offer(
        Choice.of(new Channel[] {Channel.FARM, Channel.POST, Channel.WHOLESALE}, "sales.channel"),
        containers.list(null, MOST).stream()
            .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
            .toList(),
        Choice.of(ColorClass.values(), "common.grade"),
        places.list(null, MOST).stream()
            .filter(
                place ->
                    place.kind() == Place.Kind.HOME
                        && !place.setAside()
                        && !place.code().equals(PlaceCode.COOL_ROOM))
            .map(place -> new Choice(place.code(), place.name()))
            .toList(),
        WholeList.of((limit, after) -> priceLists.list(null, limit, after)).stream()
            .filter(list -> list.replacedBy() == null && list.withdrawnFrom() == null)
            .map(list -> new Choice(list.id().toString(), list.name()))
            .toList(),
        WholeList.of(taxRates::list).stream().map(TaxRate::place).distinct().sorted().toList());
  }
}
