package org.barreltally.shops;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Shelves counted without lots, at once, by repeated requests, and beside a model. */
@QuarkusTest
class ShopShelvesTest {

  private static final String LINE = "{'container': '%s', 'lot': '%s', 'count': %d%s}";

  @Inject ShelfFixture shelf;

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  /**
   * 5 of one lot and 7 of another at $15, both packed on one day, so that the code says which comes
   * first; 4 counted. Of 8 gone the first lot lost all, the other the rest: due 15 × 0.6 = 9 a jar,
   * 8 × 9 = 72.
   */
  @Test
  void a_size_counted_without_its_lots_takes_the_oldest_first() {
    String size = newSize(16);
    List<String> lots = new ArrayList<>(List.of(shelf.lotWith(7, size), shelf.lotWith(7, size)));
    Collections.sort(lots);
    String shop = shop(size, "15.00", "40", "'missing': 'shop'");
    bring(shop, size, lots.get(0), 5).statusCode(201);
    bring(shop, size, lots.get(1), 7).statusCode(201);
    count(shop, "{'container': '%s', 'count': 4}".formatted(size))
        .statusCode(201)
        .body("lines.lot", equalTo(lots))
        .body("lines.sold", equalTo(List.of(5, 3)))
        .body("due.amount", equalTo(72.0f));
    assertEquals(0, shelf.standing("shop-" + shop, lots.get(0), size));
    assertEquals(4, shelf.standing("shop-" + shop, lots.get(1), size));
    count(
            shop,
            "{'container': '%1$s', 'count': 1}, {'container': '%1$s', 'count': 1}".formatted(size))
        .statusCode(400)
        .body("errors[0].field", equalTo("lines[1].lot"));
    count(shop, "{'container': '%s', 'count': 1}".formatted(newSize(8)))
        .statusCode(400)
        .body("errors[0].field", equalTo("lines[0].lot"));
  }

  @Test
  void a_shop_needs_no_more_than_its_name_and_keeps_nothing_until_terms_are_agreed() {
    Number commission =
        posts("/api/shops", "{'name': 'Alder Corner %s'}".formatted(UUID.randomUUID()))
            .statusCode(201)
            .body("terms.missing", equalTo("shop"))
            .extract()
            .path("terms.commissionPercent");
    assertEquals(0, commission.doubleValue());
  }

  /** Of 6 brought, 2 are written off there and 1 carried home: 3 stand, and nothing is due. */
  @Test
  void what_the_book_moved_besides_stands_in_the_statement() {
    String size = newSize(16);
    String lot = shelf.lotWith(6, size);
    String shop = shop(size, "15.00", "40", "'missing': 'shop'");
    bring(shop, size, lot, 6).statusCode(201);
    String jars = "'container': '%s', 'lot': '%s'".formatted(size, lot);
    posts(
            "/api/stock/write-offs",
            "{'place': 'shop-%s', %s, 'count': 2, 'cause': 'broken', 'reason': 'Shelf fell'}"
                .formatted(shop, jars))
        .statusCode(201);
    posts(
            "/api/stock/relocations",
            "{'from': 'shop-%s', 'to': 'cool-room', %s, 'count': 1, 'reason': 'For the fair'}"
                .formatted(shop, jars))
        .statusCode(201);
    reads("/api/shops/" + shop + "/statement")
        .body("items[0].delivered", equalTo(6))
        .body("items[0].otherwise", equalTo(-3))
        .body("items[0].closing", equalTo(3))
        .body("balance.amount", equalTo(0.0f));
  }

  /** Ten counts at once find 14 of 24: the ten gone are due once, 15 × 10 × 0.6 = 90. */
  @Test
  void what_is_gone_is_due_once_however_many_count_at_once() throws Exception {
    String size = newSize(16);
    String lot = shelf.lotWith(24, size);
    String shop = shop(size, "15.00", "40", "'missing': 'shop'");
    bring(shop, size, lot, 24).statusCode(201);
    List<Integer> answers =
        atOnce(10, () -> count(shop, LINE.formatted(size, lot, 14, "")).extract().statusCode());
    assertEquals(Collections.nCopies(10, 201), answers);
    UUID key = UUID.randomUUID();
    String again = "{'lines': [" + LINE.formatted(size, lot, 13, "") + "]}";
    String path = "/api/shops/" + shop + "/counts";
    String first = posts(path, again, key).statusCode(201).extract().path("id");
    assertEquals(first, posts(path, again, key).statusCode(201).extract().path("id"));
    // and the one gone since: 90 + 9
    reads("/api/shops/" + shop + "/statement").body("balance.amount", equalTo(99.0f));
    assertEquals(11, shelf.standing("customer", lot, size));
  }

  @Test
  void the_last_jars_go_to_as_many_deliveries_as_there_are_jars() throws Exception {
    String size = newSize(16);
    String lot = shelf.lotWith(10, size);
    String shop = shop(size, "15.00", "40", "'missing': 'shop'");
    List<Integer> answers = atOnce(8, () -> bring(shop, size, lot, 3).extract().statusCode());
    assertEquals(3, Collections.frequency(answers, 201));
    assertEquals(5, Collections.frequency(answers, 409));
    assertEquals(9, shelf.standing("shop-" + shop, lot, size));
  }

  /**
   * Beside a model in whole cents: price 1667, the shop keeps 37.5 % and bears 33 % of what is
   * missing or broken. Due for a line in 1/100,000 cents: 1667 × (100 sold + 33 borne) × 625.
   */
  @Test
  void many_days_of_a_shop_agree_with_a_model_in_cents() {
    String size = newSize(16);
    String lot = shelf.lotWith(500, size);
    String shop = shop(size, "16.67", "37.5", "'missing': 'split', 'shopBearsPercent': 33");
    Random random = new Random(20261205);
    long stands = 0;
    long owed = 0;
    long customers = 0;
    for (int step = 0; step < 40; step++) {
      int some = 1 + random.nextInt(9);
      switch (stands == 0 ? 0 : random.nextInt(4)) {
        case 0 -> {
          bring(shop, size, lot, some).statusCode(201);
          stands += some;
        }
        case 1 -> {
          move(shop, "fetchings", size, lot, some).statusCode(some <= stands ? 201 : 409);
          stands -= some <= stands ? some : 0;
        }
        case 2 -> {
          long counted = random.nextLong(stands + 3);
          long gone = Math.max(0, stands - counted);
          long broken = random.nextLong(gone + 1);
          long sold = random.nextLong(gone - broken + 1);
          long borne = broken + Math.max(0, stands - counted - broken - sold);
          long parts = 1667 * (100 * sold + 33 * borne) * 625;
          owed += (2 * parts + 100_000) / 200_000;
          customers += sold;
          count(
                  shop,
                  LINE.formatted(
                      size, lot, counted, ", 'sold': %d, 'broken': %d".formatted(sold, broken)))
              .statusCode(201);
          stands = counted;
        }
        default -> {
          posts(
                  "/api/shops/" + shop + "/payments",
                  "{'amount': {'amount': %s, 'currency': 'USD'}}"
                      .formatted(BigDecimal.valueOf(some, 2)))
              .statusCode(201);
          owed -= some;
        }
      }
      assertEquals(stands, shelf.standing("shop-" + shop, lot, size), "step " + step);
    }
    Number balance = reads("/api/shops/" + shop + "/statement").extract().path("balance.amount");
    assertEquals(owed, Math.round(balance.doubleValue() * 100));
    assertEquals(customers, shelf.standing("customer", lot, size));
  }

  private static List<Integer> atOnce(int times, Callable<Integer> asked) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(times);
    try {
      List<Integer> answers = new ArrayList<>();
      for (Future<Integer> answer : threads.invokeAll(Collections.nCopies(times, asked))) {
        answers.add(answer.get());
      }
      return answers;
    } finally {
      threads.shutdownNow();
    }
  }

  private static String shop(String size, String price, String commission, String rest) {
    String list =
        posts(
                "/api/price-lists",
                "{'name': 'Shelves %s', 'audience': 'wholesale', 'validFrom': '2020-01-01', 'lines': [{'container': '%s', 'price': {'amount': %s, 'currency': 'USD'}}]}"
                    .formatted(size, size, price))
            .statusCode(201)
            .extract()
            .path("id");
    return posts(
            "/api/shops",
            "{'name': 'Alder Corner %s', 'commissionPercent': %s, %s, 'priceList': '%s'}"
                .formatted(size, commission, rest, list))
        .statusCode(201)
        .extract()
        .path("code");
  }

  private static ValidatableResponse bring(String shop, String size, String lot, int count) {
    return move(shop, "deliveries", size, lot, count);
  }

  private static ValidatableResponse move(
      String shop, String way, String size, String lot, int count) {
    return posts(
        "/api/shops/" + shop + "/" + way,
        "{'lines': [" + LINE.formatted(size, lot, count, "") + "]}");
  }

  private static ValidatableResponse count(String shop, String lines) {
    return posts("/api/shops/" + shop + "/counts", "{'lines': [" + lines + "]}");
  }
}
