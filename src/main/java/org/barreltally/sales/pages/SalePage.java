package org.barreltally.sales.pages;

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
import java.util.List;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Places;
import org.barreltally.sales.Channel;
import org.barreltally.sales.away.Inspect;
import org.barreltally.sales.away.NoPaper;
import org.barreltally.sales.away.Returned;
import org.barreltally.sales.away.TakeBack;
import org.barreltally.sales.away.UnknownReturn;
import org.barreltally.sales.rest.AwaySaleView;
import org.barreltally.sales.rest.AwaySalesApi;
import org.barreltally.sales.rest.SaleView;
import org.barreltally.sales.rest.SalesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.OfferedRows;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One sale: its paper, what came back of it, and taking it back. */
@Path("/sales/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SalePage {

  private static final String LINES = "lines";
  private static final List<String> JARS = List.of("container", "lot");
  private static final int MOST = 500;

  @CheckedTemplate(basePath = "sales")
  static class Templates {
    static native TemplateInstance sale(
        SaleView sale, AwaySaleView paper, List<Returned> returns, Form form);

    static native TemplateInstance undo(SaleView sale, Form form);

    static native TemplateInstance takeback(
        SaleView sale,
        OfferedRows<SaleView.Line> rows,
        List<Choice> sizes,
        Form form,
        String currency);

    static native TemplateInstance inspect(
        SaleView sale,
        Returned returned,
        OfferedRows<Returned.Line> rows,
        List<Choice> rooms,
        Form form);
  }

  private final SalesApi sales;
  private final AwaySalesApi away;
  private final Containers containers;
  private final Places places;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  SalePage(
      SalesApi sales,
      AwaySalesApi away,
      Containers containers,
      Places places,
      Forms forms,
      PageFarm farm) {
    this.sales = sales;
    this.away = away;
    this.containers = containers;
    this.places = places;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @GET
  @Path("/undo")
  @Operation(hidden = true)
  public TemplateInstance undo(@PathParam("id") UUID id) {
    return Templates.undo(sales.one(id), Form.blank());
  }

  @POST
  @Path("/undo")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response undone(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SalesApi.Undo.class,
        (key, why) -> {
          sales.undo(id, key, why);
          return address(id);
        },
        form -> Templates.undo(sales.one(id), form));
  }

  @POST
  @Path("/forget-buyer")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response forget(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          away.forgetBuyer(id);
          return address(id);
        },
        form -> page(id, form));
  }

  /** Nothing needs to be said. */
  record Nothing() {}

  @GET
  @Path("/return")
  @Operation(hidden = true)
  public TemplateInstance takeBack(@PathParam("id") UUID id) {
    return returning(id, Form.blank());
  }

  @POST
  @Path("/return")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response takenBack(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        OfferedRows.without(said, LINES, "count"),
        TakeBack.class,
        (key, back) -> {
          away.takeBack(id, key, back);
          return address(id);
        },
        form -> returning(id, form));
  }

  @GET
  @Path("/returns/{returned}")
  @Operation(hidden = true)
  public TemplateInstance inspect(@PathParam("id") UUID id, @PathParam("returned") UUID returned) {
    return inspecting(id, returned, Form.blank());
  }

  @POST
  @Path("/returns/{returned}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response inspected(
      @PathParam("id") UUID id,
      @PathParam("returned") UUID returned,
      MultivaluedMap<String, String> said) {
    return forms.take(
        OfferedRows.without(said, LINES, "sound", "broken", "discarded"),
        Inspect.class,
        (key, found) -> {
          away.inspect(returned, key, found);
          return address(id);
        },
        form -> inspecting(id, returned, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    SaleView sale = sales.one(id);
    return Templates.sale(sale, paper(sale), away.returns(id).items(), form);
  }

  private AwaySaleView paper(SaleView sale) {
    try {
      return sale.channel().equals(Channel.TABLE.code()) ? null : away.invoice(sale.id());
    } catch (NoPaper none) {
      return null;
    }
  }

  private TemplateInstance returning(UUID id, Form form) {
    SaleView sale = sales.one(id);
    return Templates.takeback(
        sale,
        OfferedRows.of(
            form,
            LINES,
            sale.lines().stream().filter(line -> line.lot() != null).toList(),
            line -> List.of(line.container(), line.lot()),
            JARS,
            1),
        containers.list(null, MOST).stream()
            .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
            .toList(),
        form,
        farm.currency());
  }

  private TemplateInstance inspecting(UUID id, UUID returned, Form form) {
    Returned back =
        away.returns(id).items().stream()
            .filter(one -> one.id().equals(returned))
            .findFirst()
            .orElseThrow(() -> new UnknownReturn(returned));
    return Templates.inspect(
        sales.one(id),
        back,
        OfferedRows.of(
            form,
            LINES,
            back.lines().stream().filter(line -> line.toInspect() > 0).toList(),
            line -> List.of(line.container(), line.lot()),
            JARS,
            0),
        places.list(null, MOST).stream()
            .filter(
                place ->
                    place.kind() == Place.Kind.HOME
                        && !place.setAside()
                        && !place.code().equals(PlaceCode.COOL_ROOM))
            .map(place -> new Choice(place.code(), place.name()))
            .toList(),
        form);
  }

  private static URI address(UUID id) {
    return URI.create("/sales/" + id);
  }
}
