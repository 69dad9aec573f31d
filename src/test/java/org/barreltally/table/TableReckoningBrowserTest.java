package org.barreltally.table;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URL;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What a phone at a table reckons by itself, in Chromium, held against what the book reckons. */
@QuarkusTest
class TableReckoningBrowserTest {

  @TestHTTPResource(value = "/", tls = true)
  URL program;

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_sound() {
    SoundBook.check();
  }

  @Test
  void two_lots_of_one_item_are_asked_about_once() {
    TestTable table = TestTable.open(shelf, 20);
    String other = shelf.lotWith(10, table.size());
    table.packOut(other, 10);
    try (TestPhone phone = TestPhone.bought(program, "fr-CA")) {
      phone.opens("/table/#pair=" + TestTable.code("Téléphone"));
      phone.tap("Associer");
      phone
          .page()
          .getByLabel("NIP", new Page.GetByLabelOptions().setExact(true))
          .fill(TestPhone.PIN);
      phone.page().getByLabel("Le même encore").fill(TestPhone.PIN);
      phone.tap("Garder").serves(table.name());
      phone.jar("Ambré").click();
      phone.sees("Quel lot est sur la table maintenant");
      phone.tap(other);
      Locator jar = phone.jar("Ambré");
      jar.click();
      phone.sees("2 pots").isAccessible("French table");
      phone.tap("Carte");
      phone.page().waitForCondition(() -> table.sales().size() == 1);
      Map<String, Object> sale = table.sales().values().iterator().next();
      assertEquals(other, ((Map<?, ?>) ((List<?>) sale.get("lines")).get(0)).get("lot"));
    }
  }

  /**
   * Random baskets of two sizes and three grades under deals of every kind, as the program quotes
   * them.
   */
  @Test
  void the_phone_reckons_deals_as_the_price_lists_do() {
    Random random = new Random(20261003);
    String one = Owner.newSize(8);
    String other = Owner.newSize(16);
    String list =
        posts(
                "/api/price-lists",
                ("{'name': 'Deals %1$s', 'audience': 'show', 'validFrom': '2026-01-01', 'lines': ["
                        + "{'container': '%1$s', 'grade': 'golden', 'price': {'amount': 9.35, 'currency': 'USD'}},"
                        + "{'container': '%1$s', 'grade': 'amber', 'price': {'amount': 8.99, 'currency': 'USD'}},"
                        + "{'container': '%1$s', 'grade': 'dark', 'price': {'amount': 8.99, 'currency': 'USD'}},"
                        + "{'container': '%2$s', 'price': {'amount': 15, 'currency': 'USD'}}], 'deals': ["
                        + "{'container': '%1$s', 'count': 3, 'price': {'amount': 25, 'currency': 'USD'}},"
                        + "{'container': '%1$s', 'grade': 'amber', 'count': 2, 'price': {'amount': 16.01, 'currency': 'USD'}},"
                        + "{'container': '%2$s', 'count': 2, 'price': {'amount': 28, 'currency': 'USD'}},"
                        + "{'container': '%2$s', 'count': 5, 'price': {'amount': 66, 'currency': 'USD'}}]}")
                    .formatted(one, other))
            .statusCode(201)
            .extract()
            .path("id");
    Map<String, Integer> prices = Map.of("golden", 935, "amber", 899, "dark", 899);
    String deals =
        "[{container: '%1$s', grade: null, count: 3, coins: 2500}, {container: '%1$s', grade: 'amber', count: 2, coins: 1601}, {container: '%2$s', grade: null, count: 2, coins: 2800}, {container: '%2$s', grade: null, count: 5, coins: 6600}]"
            .formatted(one, other);
    try (TestPhone phone = TestPhone.bought(program)) {
      phone.opens("/table/");
      for (int basket = 0; basket < 16; basket++) {
        StringBuilder asked = new StringBuilder();
        StringBuilder reckoned = new StringBuilder();
        for (int line = 0; line < 1 + random.nextInt(5); line++) {
          String size = random.nextInt(3) == 0 ? other : one;
          String grade = List.of("golden", "amber", "dark").get(random.nextInt(3));
          int count = 1 + random.nextInt(7);
          boolean given = random.nextInt(6) == 0;
          int each = given ? random.nextInt(1000) : size.equals(other) ? 1500 : prices.get(grade);
          asked.append(
              "%s{'container': '%s', 'grade': '%s', 'count': %d%s}"
                  .formatted(
                      line == 0 ? "" : ", ",
                      size,
                      grade,
                      count,
                      given
                          ? ", 'price': {'amount': %d.%02d, 'currency': 'USD'}"
                              .formatted(each / 100, each % 100)
                          : ""));
          reckoned.append(
              "%s{container: '%s', grade: '%s', count: %d, each: %d, agreed: %s, taxPercent: null}"
                  .formatted(line == 0 ? "" : ", ", size, grade, count, each, given));
        }
        var quote =
            posts("/api/price-lists/" + list + "/quote", "{'lines': [" + asked + "], 'deal': true}")
                .statusCode(200)
                .extract()
                .jsonPath();
        Map<?, ?> found =
            (Map<?, ?>)
                phone
                    .page()
                    .evaluate(
                        "async () => (await import('/table/deals.js')).reckon([%s], %s, true)"
                            .formatted(reckoned, deals));
        assertEquals(cents(quote.getString("total.amount")), found.get("total"), asked.toString());
        assertEquals(cents(quote.getString("saved.amount")), found.get("saved"), asked.toString());
        assertEquals(
            quote.getList("lines.amount.amount", String.class).stream()
                .map(TableReckoningBrowserTest::cents)
                .toList(),
            found.get("amounts"),
            asked.toString());
      }
    }
  }

  private static Integer cents(String amount) {
    return new BigDecimal(amount)
        .movePointRight(2)
        .setScale(0, RoundingMode.HALF_UP)
        .intValueExact();
  }

  /** The example of RFC 9562, appendix A.6: 1645557742000 ms is 017F22E2-79B0. */
  @Test
  void ids_are_of_version_7_and_taxes_are_rounded_once() {
    try (TestPhone phone = TestPhone.bought(program)) {
      phone.opens("/table/");
      String id =
          (String)
              phone
                  .page()
                  .evaluate("async () => (await import('/table/ids.js')).newId(1645557742000)");
      assertTrue(id.matches("017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}"), id);
      String reckon =
          "async () => (await import('/table/deals.js')).reckon([{container: 'X', count: 1, each: %d, agreed: false, taxPercent: %s}], [], %s).%s";
      // by hand: 10.00 x 6.25 % = 0.625, half up 0.63; 10.63 holds 10.63 x 6.25 / 106.25 = 0.6253
      // in it
      assertEquals(1063, phone.page().evaluate(reckon.formatted(1000, "6.25", "false", "total")));
      assertEquals(63, phone.page().evaluate(reckon.formatted(1063, "6.25", "true", "tax")));
      phone.isAccessible("pairing");
    }
  }
}
