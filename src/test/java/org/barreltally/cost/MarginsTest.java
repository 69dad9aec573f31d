package org.barreltally.cost;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.oneOf;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.SoundBook;
import org.barreltally.books.InABlankBook;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/**
 * 100 pints of opening stock that cost 200.00 go, at 2.00 each, to a show, a shop, a gift box and a
 * buyer at the farm. Every margin by hand.
 */
@QuarkusTest
class MarginsTest implements InABlankBook {

  private static final String PRICE = "'price': {'amount': 15.00, 'currency': 'USD'}";

  @Inject ShelfFixture shelf;
  @Inject Clock clock;

  private String lot;

  @Test
  void each_way_to_a_buyer_says_what_it_earned_and_they_sum_to_the_year() {
    lot = shelf.lotWith(100, "PT");
    posts(
            "/api/costs",
            "{'on': '2024-06-20', 'kind': 'syrup', 'lot': '%s', 'amount': {'amount': 200.00, 'currency': 'USD'}}"
                .formatted(lot))
        .statusCode(oneOf(200, 201));
    posts(
            "/api/price-lists",
            "{'name': 'Retail', 'audience': 'retail', 'validFrom': '2020-01-01', 'lines': [{'container': 'PT', "
                + PRICE
                + "}]}")
        .statusCode(oneOf(200, 201));
    int year = LocalDate.now(clock).getYear();
    String show = show();
    shop();
    gift();
    posts(
            "/api/sales",
            "{'channel': 'farm', 'lines': [{'container': 'PT', 'lot': '%s', 'count': 3, %s}], 'paid': {}}"
                .formatted(lot, PRICE))
        .statusCode(oneOf(200, 201));

    // show: 150 taken for 10 jars, 11 gone to buyers by the count, one broken; fee 30, spent 5:
    // 150 − 22 − 30 − 5 − 2 = 91
    JsonPath shows = json("/api/margins?by=show&year=" + year);
    assertEquals(show, shows.getString("items[0].name"));
    same("150", shows, "items[0].takings.amount");
    same("22", shows, "items[0].goods.amount");
    same("30", shows, "items[0].charges.find { it.what == 'fee' }.amount.amount");
    same("5", shows, "items[0].charges.find { it.what == 'spent' }.amount.amount");
    same("2", shows, "items[0].charges.find { it.what == 'goods-lost' }.amount.amount");
    same("91", shows, "items[0].margin.amount");
    // and it goes with what the settlement says: profit before goods 120
    same("120", json("/api/shows/" + show + "/settlement"), "profit.amount");

    // shop: 5 sold at 15 less 40 %: 45 − 10 − 2 missing = 33. Gift: 40 − 4 = 36. Farm: 45 − 6 = 39.
    JsonPath orders = json("/api/margins?by=order&year=" + year);
    same("33", orders, "items.find { it.what == 'shop' }.margin.amount");
    same("36", orders, "items.find { it.what == 'gift' }.margin.amount");
    same("39", orders, "items.find { it.what == 'sale' }.margin.amount");
    same("108", orders, "totals.margin.amount");

    // by size: 150 + 45 + 45 for 11 + 5 + 3 jars; boxes 40 for two
    JsonPath sizes = json("/api/margins?by=container&year=" + year);
    same("240", sizes, "items.find { it.name == 'PT' }.takings.amount");
    same("38", sizes, "items.find { it.name == 'PT' }.goods.amount");
    same("4", sizes, "items.find { it.name == 'gift-boxes' }.goods.amount");

    // the year: opening 200; 21 jars to buyers 42, broken 2, missing 2; 77 left at 2 = 154
    JsonPath goods = json("/api/cost-of-goods?year=" + year);
    same("200", goods, "totals.opening.amount");
    same("42", goods, "totals.goneTo.find { it.account == 'customer' }.cost.amount");
    same("46", goods, "totals.gone.amount");
    same("154", goods, "totals.closing.amount");
    same("42", sizes, "totals.goods.amount");
    // 4 still stand at the shop: 8 of the 154
    JsonPath value = json("/api/stock-value");
    same("8", value, "totals.find { it.where == 'consigned' }.cost.amount");
    same("146", value, "totals.find { it.where == 'own-shelves' }.cost.amount");
    SoundBook.check();
  }

  /** 24 out, 10 sold without lot, 12 home and one broken. */
  private String show() {
    String day = LocalDate.now(clock).toString();
    String show =
        posts(
                "/api/shows",
                "{'name': 'Fernby Fair', 'town': 'Fernby', 'starts': '%s', 'ends': '%s', 'state': 'accepted', 'booth': {'fee': {'amount': 30.00, 'currency': 'USD'}}}"
                    .formatted(day, day))
            .statusCode(oneOf(200, 201))
            .extract()
            .path("id");
    posts("/api/shows/" + show + "/pack-out", "{'lines': [" + line(24) + "]}")
        .statusCode(oneOf(200, 201));
    posts(
            "/api/shows/" + show + "/sales",
            "{'id': '%s', 'at': '%s', 'lines': [{'container': 'PT', 'count': 10, %s}], 'paid': {'cash': {'amount': 150.00, 'currency': 'USD'}}}"
                .formatted(UUID.randomUUID(), clock.instant(), PRICE))
        .statusCode(oneOf(200, 201));
    posts(
            "/api/shows/" + show + "/back",
            "{'lines': [{'container': 'PT', 'lot': '" + lot + "', 'count': 12, 'broken': 1}]}")
        .statusCode(oneOf(200, 201));
    posts("/api/shows/" + show + "/settlement", "{}").statusCode(oneOf(200, 201));
    posts(
            "/api/costs",
            "{'on': '%s', 'kind': 'other', 'show': '%s', 'amount': {'amount': 5.00, 'currency': 'USD'}}"
                .formatted(day, show))
        .statusCode(oneOf(200, 201));
    return show;
  }

  /** 10 brought, 5 sold, one missing, which the maker bears. */
  private void shop() {
    String shop =
        posts(
                "/api/shops",
                "{'name': 'Quillback Store', 'commissionPercent': 40, 'missing': 'maker'}")
            .statusCode(oneOf(200, 201))
            .extract()
            .path("code");
    posts("/api/shops/" + shop + "/deliveries", "{'lines': [" + line(10) + "]}")
        .statusCode(oneOf(200, 201));
    posts(
            "/api/shops/" + shop + "/counts",
            "{'lines': [{'container': 'PT', 'lot': '" + lot + "', 'count': 4, 'sold': 5}]}")
        .statusCode(oneOf(200, 201));
  }

  /** A box of two pints for 40.00. */
  private void gift() {
    String box =
        posts(
                "/api/gift-boxes",
                "{'name': 'Pair', 'price': {'amount': 40.00, 'currency': 'USD'}, 'contents': [{'container': 'PT', 'grade': 'amber', 'count': 2}]}")
            .statusCode(oneOf(200, 201))
            .extract()
            .path("id");
    String order =
        "/api/gift-orders/"
            + posts(
                    "/api/gift-orders",
                    "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [{'name': 'Ottilie Fen', 'box': '%s', 'count': 1, 'delivery': 'collect'}]}"
                        .formatted(box))
                .statusCode(oneOf(200, 201))
                .extract()
                .path("id");
    posts(order + "/reserve", "{}").statusCode(oneOf(200, 201));
    for (String step : new String[] {"pick", "pack", "deliver"}) {
      posts(order + "/recipients/1/" + step, "{}").statusCode(oneOf(200, 201));
    }
  }

  private String line(int count) {
    return "{'container': 'PT', 'lot': '%s', 'count': %d}".formatted(lot, count);
  }

  private static JsonPath json(String path) {
    return reads(path).extract().jsonPath();
  }

  private static void same(String expected, JsonPath json, String path) {
    Object found = json.get(path);
    assertEquals(
        0,
        new BigDecimal(expected).compareTo(new BigDecimal(String.valueOf(found))),
        path + ": " + found + " not " + expected);
  }
}
