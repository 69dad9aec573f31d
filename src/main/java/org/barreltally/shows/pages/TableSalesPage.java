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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.measure.ColorClass;
import org.barreltally.sales.CountNeeded;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.rest.SaleBatch;
import org.barreltally.sales.rest.SaleView;
import org.barreltally.sales.rest.SalesApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.shows.rest.TableSalesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What was sold at a show's table, and sales entered by hand from a paper tally. */
@Path("/shows/{id}/sales")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class TableSalesPage {

  private static final List<Column<SaleView>> COLUMNS =
      List.of(
          Column.by("at", SaleView::bookedAt),
          Column.by("total", sale -> sale.total() == null ? null : sale.total().amount()));

  /** A sale as its form sends it; its id is the form's. */
  record Shape(Instant at, List<SaidSale.Line> lines, Boolean deal, SaidSale.Paid paid) {}

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance sales(
        ShowDetails details, Listing<SaleView> list, List<CountNeeded> counts, int conflicts);

    static native TemplateInstance sell(
        ShowDetails details,
        Form form,
        List<Choice> sizes,
        List<Choice> grades,
        String at,
        String currency);
  }

  private final ShowsApi api;
  private final TableSalesApi table;
  private final SalesApi sales;
  private final Forms forms;
  private final BookingDesk desk;
  private final Days days;

  @Inject
  TableSalesPage(
      ShowsApi api, TableSalesApi table, SalesApi sales, Forms forms, BookingDesk desk, Days days) {
    this.api = api;
    this.table = table;
    this.sales = sales;
    this.forms = forms;
    this.desk = desk;
    this.days = days;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@PathParam("id") UUID id, @Context UriInfo uri) {
    ShowDetails details = details(id);
    String place = details.show().place();
    return Templates.sales(
        details,
        Listing.of(
            WholeList.of((limit, after) -> table.list(id, false, limit, after)), COLUMNS, uri),
        sales.countNeeded(place).items(),
        sales.conflicts(place, null, null).items().size());
  }

  @GET
  @Path("/new")
  @Operation(hidden = true)
  public TemplateInstance blank(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Path("/new")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response sold(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Shape.class,
        (key, sale) -> {
          SaidSale told =
              new SaidSale(UUID.fromString(key), sale.at(), sale.lines(), sale.deal(), sale.paid());
          table.sell(id, key, new SaleBatch(List.of(told), true));
          return URI.create("/shows/" + id + "/sales");
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    ShowDetails details = details(id);
    return Templates.sell(
        details,
        form,
        desk.sizes(),
        Choice.of(ColorClass.values(), "common.grade"),
        about(details).toString(),
        desk.currency());
  }

  /** Now while the show is on, else the noon of its last day. */
  private LocalDateTime about(ShowDetails details) {
    LocalDate last = details.show().booking().ends();
    Instant now = days.now();
    return days.today().isAfter(last)
        ? last.atTime(12, 0)
        : now.atZone(desk.farm().zone(now)).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES);
  }

  private ShowDetails details(UUID id) {
    return (ShowDetails) api.at(id).getEntity();
  }
}
