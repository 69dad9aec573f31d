package org.barreltally.gifts.pages;

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
import java.util.List;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The gift orders. */
@Path("/gift-orders")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class OrderPages implements MenuEntry {

  private static final List<Column<OrderRow>> COLUMNS =
      List.of(
          Column.by("buyer", OrderRow::buyer),
          Column.by("send", OrderRow::nextSend),
          Column.by("recipients", OrderRow::recipients),
          Column.by("total", order -> order.total().amount()),
          Column.by("balance", order -> order.balance().amount()));

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance orders(
        Listing<OrderRow> list, Form asked, List<Choice> states, boolean any);
  }

  private final GiftOrdersApi orders;
  private final PageFarm farm;

  @Inject
  OrderPages(GiftOrdersApi orders, PageFarm farm) {
    this.orders = orders;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("buyer") String buyer, @QueryParam("state") String state, @Context UriInfo uri) {
    Form asked = Form.with("buyer", buyer, "state", state);
    List<OrderRow> all =
        WholeList.of(orders::list).stream()
            .map(order -> OrderRow.of(order, farm.today()))
            .sorted(COLUMNS.get(1).order())
            .toList();
    List<OrderRow> found =
        all.stream()
            .filter(order -> order.has(asked.value("state")) && order.isBy(asked.value("buyer")))
            .toList();
    return Templates.orders(
        Listing.of(found, COLUMNS, uri),
        asked,
        Choice.of(RecipientState.values(), "gifts.state"),
        !all.isEmpty());
  }

  @Override
  public String path() {
    return "/gift-orders";
  }

  @Override
  public String words() {
    return "gifts.orders";
  }

  @Override
  public Part part() {
    return Part.SALES;
  }

  @Override
  public int order() {
    return 40;
  }
}
