package org.barreltally.sales.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barreltally.sales.Channel;
import org.barreltally.sales.away.NoPaper;
import org.barreltally.sales.rest.AwaySaleView;
import org.barreltally.sales.rest.AwaySalesApi;
import org.barreltally.sales.rest.SaleView;
import org.barreltally.sales.rest.SalesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The sales away from shows, and on request those at tables. */
@Path("/sales")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SalesPage implements MenuEntry {

  private static final List<Column<SaleView>> COLUMNS =
      List.of(
          Column.by("at", SaleView::bookedAt),
          Column.by("channel", SaleView::channel),
          Column.by("total", sale -> sale.total() == null ? null : sale.total().amount()));

  @CheckedTemplate(basePath = "sales")
  static class Templates {
    static native TemplateInstance list(
        Listing<SaleView> list,
        Map<String, AwaySaleView> papers,
        Form asked,
        List<Choice> channels);
  }

  private final SalesApi sales;
  private final AwaySalesApi away;

  @Inject
  SalesPage(SalesApi sales, AwaySalesApi away) {
    this.sales = sales;
    this.away = away;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("channel") String channel,
      @QueryParam("toLookAt") boolean toLookAt,
      @Context UriInfo uri) {
    List<SaleView> wanted =
        new ArrayList<>(
            WholeList.of((limit, after) -> sales.list(null, toLookAt, limit, after)).stream()
                .filter(
                    sale ->
                        channel == null || channel.isBlank()
                            ? !sale.channel().equals(Channel.TABLE.code())
                            : sale.channel().equals(channel))
                .toList());
    wanted.sort(Comparator.comparing(SaleView::bookedAt).reversed());
    Listing<SaleView> list = Listing.of(wanted, COLUMNS, uri);
    Map<String, AwaySaleView> papers = new HashMap<>();
    list.rows()
        .forEach(
            sale -> {
              AwaySaleView paper = paper(sale);
              if (paper != null) {
                papers.put(sale.id().toString(), paper);
              }
            });
    return Templates.list(
        list,
        papers,
        Form.with("channel", channel, "toLookAt", toLookAt ? "true" : null),
        Choice.of(Channel.values(), "sales.channel"));
  }

  /** Number and buyer, which a sale at a table has not. */
  private AwaySaleView paper(SaleView sale) {
    try {
      return sale.channel().equals(Channel.TABLE.code()) ? null : away.invoice(sale.id());
    } catch (NoPaper none) {
      return null;
    }
  }

  @Override
  public String path() {
    return "/sales";
  }

  @Override
  public String words() {
    return "sales.title";
  }

  @Override
  public Part part() {
    return Part.SALES;
  }

  @Override
  public int order() {
    return 20;
  }
}
