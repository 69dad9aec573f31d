package org.barreltally.shops.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.barreltally.pricing.Money;
import org.barreltally.shops.Shop;
import org.barreltally.shops.Statement;
import org.barreltally.shops.rest.ShopShelfApi;
import org.barreltally.shops.rest.ShopsApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The shops that sell on consignment. */
@Path("/shops")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ShopPages implements MenuEntry {

  /**
   * A shop in the list.
   *
   * @param standing jars on its shelf by the book
   * @param balance what it still owes
   */
  public record Row(Shop shop, long standing, Money balance) {}

  private static final List<Column<Row>> COLUMNS =
      List.of(
          Column.by("name", row -> row.shop().name()),
          Column.by("commission", row -> row.shop().terms().commissionPercent()),
          Column.by("standing", Row::standing),
          Column.by("balance", row -> row.balance().amount()));

  @CheckedTemplate(basePath = "shops")
  static class Templates {
    static native TemplateInstance shops(Listing<Row> list);
  }

  private final ShopsApi shops;
  private final ShopShelfApi shelves;

  @Inject
  ShopPages(ShopsApi shops, ShopShelfApi shelves) {
    this.shops = shops;
    this.shelves = shelves;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return Templates.shops(
        Listing.of(WholeList.of(shops::list).stream().map(this::row).toList(), COLUMNS, uri));
  }

  private Row row(Shop shop) {
    Statement statement = shelves.statement(shop.code(), null, null);
    return new Row(
        shop,
        statement.items().stream().mapToLong(Statement.Item::closing).sum(),
        statement.balance());
  }

  @Override
  public String path() {
    return "/shops";
  }

  @Override
  public String words() {
    return "shops.title";
  }

  @Override
  public Part part() {
    return Part.SALES;
  }

  @Override
  public int order() {
    return 60;
  }
}
