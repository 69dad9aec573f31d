package org.barreltally.cost;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.path.json.config.JsonPathConfig;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.barreltally.books.InABlankBook;
import org.barreltally.people.PersonFixture;
import org.junit.jupiter.api.Test;

/**
 * Three years of costs, with the sums by hand. In 2024 two barrels alike bear 800.00; the first
 * becomes 60 pints and 80 half-pints, the second 100 pints.
 */
@QuarkusTest
class CostScenarioTest implements InABlankBook {

  private static final String SEASON_2024 = "'season': 2024";

  @Inject BookRows rows;
  @Inject PersonFixture people;

  private String first;
  private String second;
  private String labour;

  @Test
  void costs_go_with_the_goods_from_the_boil_to_the_buyer_and_closed_years_stand() {
    spend_and_make_in_2024();
    the_first_lot_can_be_followed_on_paper();
    the_year_adds_up_by_every_method();
    margins_by_container_and_order();
    only_owner_and_bookkeeper();
    close_2024_and_tell_more_of_it();
    heels_carry_their_cost_on();
    costs_told_while_a_year_is_closed_are_in_it_or_late();
    SoundBook.check();
  }

  private void spend_and_make_in_2024() {
    cost("'on': '2024-04-20', 'kind': 'fuel', " + SEASON_2024 + ", 'amount': " + usd("600.00"));
    labour =
        cost(
            "'on': '2024-04-20', 'kind': 'labour', "
                + SEASON_2024
                + ", 'hours': 10, 'rate': "
                + usd("20.00"));
    posts("/api/supplies", "{'code': 'LABEL', 'name': 'Labels', 'kind': 'label', 'perJar': 1}")
        .statusCode(201);
    cost(
        "'on': '2024-05-01', 'kind': 'jar', 'container': 'PT', 'per': 100, 'amount': "
            + usd("85.00"));
    cost(
        "'on': '2024-05-01', 'kind': 'jar', 'container': 'HP', 'per': 100, 'amount': "
            + usd("55.00"));
    cost(
        "'on': '2024-05-01', 'kind': 'label', 'supply': 'LABEL', 'per': 1000, 'amount': "
            + usd("50.00"));
    // a price of a later day changes no run before it
    cost("'on': '2024-09-01', 'kind': 'jar', 'container': 'PT', 'amount': " + usd("9.99"));
    posts("/api/barrels", barrel("A", 2024, "2024-03-14", 250, 42, 66.9, 62)).statusCode(201);
    posts("/api/barrels", barrel("B", 2024, "2024-03-15", 250, 42, 66.9, 62)).statusCode(201);
    first =
        run(
            "2024-06-20",
            "{'barrel': 'A', 'all': true}",
            "{'container': 'PT', 'count': 60, 'broken': 4}, {'container': 'HP', 'count': 80}",
            "");
    second =
        run("2024-07-10", "{'barrel': 'B', 'all': true}", "{'container': 'PT', 'count': 100}", "");
    cost("'on': '2024-06-20', 'kind': 'labour', 'run': '" + first + "', 'amount': " + usd("70.00"));
    sells(second, "PT", 10, "15.00");
    sells(first, "HP", 20, "9.00");
  }

  /**
   * Barrel A bears 400.00 of 800.00. By mass a pint is two half-pints: 60 × 2 + 80 = 200 parts, so
   * 240.00 and 160.00. The run's 70.00 over 140 jars: 30.00 and 40.00. Containers: 64 pints filled
   * × 0.85 = 54.40, half-pints 80 × 0.55 = 44.00; labels 64 × 0.05 = 3.20 and 80 × 0.05 = 4.00.
   * Pints 327.60 ÷ 60 = 5.46, half-pints 248.00 ÷ 80 = 3.10. What the run lost bears nothing.
   */
  private void the_first_lot_can_be_followed_on_paper() {
    JsonPath lot = json("/api/lots/" + first + "/cost");
    same("400.00", lot, "cameOf[0].carried.amount");
    same("400.00", lot, "cameOf[0].used[0].amount.cost.amount");
    same("240.00", lot, "cameOf[0].came.find { it.container == 'PT' }.syrup.amount");
    same("327.60", lot, "cameOf[0].came.find { it.container == 'PT' }.cost.amount");
    same("5.46", lot, "cameOf[0].came.find { it.container == 'PT' }.each.amount");
    same("248.00", lot, "cameOf[0].came.find { it.container == 'HP' }.cost.amount");
    same("3.10", lot, "cameOf[0].came.find { it.container == 'HP' }.each.amount");
    assertEquals(
        "70.00 × 60 jars ÷ 140 good jars = 30.00",
        lot.getString(
            "cameOf[0].came.find { it.container == 'PT' }.added.find { it.of == 'run' }.working"));
    assertEquals(
        "85.00 for 100 × 64, broken ones included = 54.40",
        lot.getString(
            "cameOf[0].came.find { it.container == 'PT' }.added.find { it.of == 'container' }.working"));
    String parent = lot.getString("cameOf[0].used[0].lot");
    JsonPath barrel = json("/api/lots/" + parent + "/cost");
    same("400.00", barrel, "cameOf[0].came[0].cost.amount");
    asks().get("/api/lots/NOBODY/cost").then().statusCode(404).body("code", equalTo("unknown-lot"));
  }

  /**
   * Added: 800.00 boiled + 70.00 + 195.60 of containers (105.60 and 100 pints × 0.90 = 90.00) =
   * 1065.60. The second lot's pints are 490.00 ÷ 100 = 4.90, all pints 817.60 ÷ 160 = 5.11. Gone
   * are 10 pints (of the second lot) and 20 half-pints at 3.10 = 62.00: by lot 49.00 + 62.00, by
   * the mean 51.10 + 62.00, first in first out 10 × 5.46 + 62.00.
   */
  private void the_year_adds_up_by_every_method() {
    String[][] methods = {
      {"specific-lot", "111.00", "954.60"},
      {"moving-average", "113.10", "952.50"},
      {"first-in-first-out", "116.60", "949.00"}
    };
    for (String[] method : methods) {
      JsonPath year = json("/api/cost-of-goods?year=2024&method=" + method[0]);
      same("0.00", year, "totals.opening.amount");
      same("800.00", year, "totals.boiled.amount");
      same("70.00", year, "totals.runs.amount");
      same("195.60", year, "totals.containers.amount");
      same(method[1], year, "totals.gone.amount");
      same(method[1], year, "totals.goneTo.find { it.account == 'customer' }.cost.amount");
      same(method[2], year, "totals.closing.amount");
      JsonPath value = json("/api/stock-value?on=2024-12-31&method=" + method[0]);
      same(method[2], value, "total.amount");
      same(method[2], value, "totals.find { it.where == 'own-shelves' }.cost.amount");
    }
    // before the runs both barrels stand: 400.00 each
    JsonPath may = json("/api/stock-value?on=2024-05-31");
    same("800.00", may, "totals.find { it.where == 'barrels' }.cost.amount");
    assertEquals("specific-lot", may.getString("method"));
  }

  private void margins_by_container_and_order() {
    JsonPath sizes = json("/api/margins?year=2024&by=container");
    same("150.00", sizes, "items.find { it.name == 'PT' }.takings.amount");
    same("49.00", sizes, "items.find { it.name == 'PT' }.goods.amount");
    same("101.00", sizes, "items.find { it.name == 'PT' }.margin.amount");
    same("118.00", sizes, "items.find { it.name == 'HP' }.margin.amount");
    same("219.00", sizes, "totals.margin.amount");
    JsonPath orders = json("/api/margins?year=2024&by=order");
    assertEquals(2, orders.getInt("items.size()"));
    same("219.00", orders, "totals.margin.amount");
  }

  private void only_owner_and_bookkeeper() {
    String bookkeeper = people.with("bookkeeper", "sums and more sums");
    String packer = people.with("packing", "boxes and more boxes");
    for (String path :
        List.of(
            "/api/costs",
            "/api/cost-method",
            "/api/cost-of-goods?year=2024",
            "/api/margins?year=2024&by=show",
            "/api/stock-value",
            "/api/lots/" + first + "/cost")) {
      as(bookkeeper, "sums and more sums").get(path).then().statusCode(200);
      as(packer, "boxes and more boxes").get(path).then().statusCode(403);
    }
    for (String who : List.of(bookkeeper, packer)) {
      String password = who.equals(packer) ? "boxes and more boxes" : "sums and more sums";
      as(who, password)
          .contentType("application/json")
          .header("Idempotency-Key", java.util.UUID.randomUUID())
          .body("{\"year\": 2026, \"method\": \"moving-average\"}")
          .post("/api/cost-method")
          .then()
          .statusCode(403);
    }
  }

  private static io.restassured.specification.RequestSpecification as(String who, String password) {
    return given().auth().preemptive().basic(who, password);
  }

  private void close_2024_and_tell_more_of_it() {
    asks().post("/api/years/2024/close").then().statusCode(200);
    String goods = text("/api/cost-of-goods?year=2024");
    String value = text("/api/stock-value?on=2024-12-31");
    JsonPath late =
        posts(
                "/api/costs",
                "{'on': '2024-12-20', 'kind': 'other', "
                    + SEASON_2024
                    + ", 'amount': "
                    + usd("90.00")
                    + "}")
            .statusCode(201)
            .extract()
            .jsonPath();
    assertEquals(2025, late.getInt("bookYear"));
    assertTrue(late.getBoolean("late"));
    posts("/api/costs/" + labour + "/reversal", "{'reason': 'It was paid in syrup'}")
        .statusCode(201)
        .body("reversed.reason", equalTo("It was paid in syrup"));
    // a container price told late, and a sale of the closed year
    cost("'on': '2024-05-02', 'kind': 'jar', 'container': 'PT', 'amount': " + usd("2.00"));
    sells(first, "PT", 1, "15.00");
    posts("/api/cost-method", "{'year': 2024, 'method': 'moving-average'}")
        .statusCode(409)
        .body("code", equalTo("method-kept"));
    posts("/api/cost-method", "{'year': 2025, 'method': 'moving-average'}").statusCode(201);
    assertEquals(goods, text("/api/cost-of-goods?year=2024"));
    assertEquals(value, text("/api/stock-value?on=2024-12-31"));

    // 2025: opening by the mean 952.50, which is 2.10 less than 2024 closed with by lot; one pint
    // at 5.11 and the late 90.00 are gone.
    JsonPath next = json("/api/cost-of-goods?year=2025");
    assertEquals("moving-average", next.getString("method"));
    same("-2.10", next, "totals.methodChange.amount");
    same("952.50", next, "totals.opening.amount");
    same("90.00", next, "totals.late.amount");
    same("95.11", next, "totals.gone.amount");
    same("947.39", next, "totals.closing.amount");
    int thisYear = java.time.LocalDate.now().getYear();
    same("-200.00", json("/api/cost-of-goods?year=" + thisYear), "totals.late.amount");
  }

  /** A heel goes into the next run: what it cost is its share of its run's good mass. */
  private void heels_carry_their_cost_on() {
    cost("'on': '2025-04-01', 'kind': 'fuel', 'season': 2025, 'amount': " + usd("123.45"));
    posts("/api/barrels", barrel("C", 2025, "2025-03-20", 250, 42, 66.9, 62)).statusCode(201);
    String third =
        run(
            "2025-06-20",
            "{'barrel': 'C', 'all': true}",
            "{'container': 'PT', 'count': 50}",
            ", 'heel': {'weight': {'value': 30, 'unit': 'lb'}, 'keptIn': 'H-1'}");
    String bought =
        posts(
                "/api/purchases",
                barrel("D", 2025, "2025-05-02", 150, 42, 66.9, 62)
                    .replace("'filledOn'", "'on'")
                    .replaceFirst("\\{", "{'supplier': {'name': 'Fennimore Ash'}, "))
            .statusCode(201)
            .extract()
            .path("barrel.lot");
    cost(
        "'on': '2025-05-02', 'kind': 'syrup', 'lot': '" + bought + "', 'amount': " + usd("200.00"));
    String fourth =
        run(
            "2025-06-21",
            "{'barrel': 'D', 'all': true}, {'vessel': 'H-1', 'all': true}",
            "{'container': 'PT', 'count': 90}",
            "");
    BigDecimal heel =
        number(
            "SELECT e.amount FROM entries e JOIN items i ON i.id = e.item JOIN movements m ON m.id = e.movement WHERE i.lot = '"
                + third
                + "' AND i.container IS NULL AND e.place = 'barrel-room' AND m.kind = 'canning' AND e.amount > 0");
    BigDecimal jars =
        number(
            "SELECT 50 * grams_each FROM items WHERE lot = '" + third + "' AND container = 'PT'");
    BigDecimal heelCost =
        new BigDecimal("123.45").multiply(heel).divide(heel.add(jars), 2, RoundingMode.HALF_UP);
    JsonPath lot = json("/api/lots/" + fourth + "/cost");
    same(
        heelCost.toPlainString(),
        lot,
        "cameOf[0].used.find { it.lot == '" + third + "' }.amount.cost.amount");
    same("200.00", lot, "cameOf[0].used.find { it.lot == '" + bought + "' }.amount.cost.amount");
    same(heelCost.add(new BigDecimal("200.00")).toPlainString(), lot, "cameOf[0].carried.amount");
    JsonPath year = json("/api/cost-of-goods?year=2025");
    same("200.00", year, "totals.bought.amount");
    same("123.45", year, "totals.boiled.amount");
  }

  private void costs_told_while_a_year_is_closed_are_in_it_or_late() {
    ExecutorService writers = Executors.newFixedThreadPool(4);
    CountDownLatch some = new CountDownLatch(8);
    List<Future<?>> all = new ArrayList<>();
    for (int n = 0; n < 4; n++) {
      all.add(
          writers.submit(
              () -> {
                for (int each = 0; each < 12; each++) {
                  cost(
                      "'on': '2025-10-01', 'kind': 'other', 'season': 2025, 'note': 'at once', 'amount': "
                          + usd("0.10"));
                  some.countDown();
                }
              }));
    }
    try {
      some.await();
      asks().post("/api/years/2025/close").then().statusCode(200);
      String closed = text("/api/cost-of-goods?year=2025");
      for (Future<?> each : all) {
        each.get();
      }
      assertEquals(closed, text("/api/cost-of-goods?year=2025"));
    } catch (Exception e) {
      throw new AssertionError(e);
    } finally {
      writers.shutdownNow();
    }
    long in = rows.number("SELECT count(*) FROM costs WHERE note = 'at once' AND book_year = 2025");
    long late =
        rows.number(
            "SELECT count(*) FROM costs WHERE note = 'at once' AND book_year = 2026 AND late");
    assertEquals(48, in + late);
    assertTrue(in >= 8, "some came before: " + in);
    BigDecimal boiled = new BigDecimal("123.45").add(BigDecimal.valueOf(in * 10, 2));
    same(boiled.toPlainString(), json("/api/cost-of-goods?year=2025"), "totals.boiled.amount");
  }

  private BigDecimal number(String sql) {
    return new BigDecimal(rows.column(sql).get(0));
  }

  private static String text(String path) {
    return reads(path).extract().asString();
  }

  private static JsonPath json(String path) {
    return new JsonPath(text(path))
        .using(
            JsonPathConfig.jsonPathConfig()
                .numberReturnType(JsonPathConfig.NumberReturnType.BIG_DECIMAL));
  }

  private static void same(String expected, JsonPath json, String path) {
    Object found = json.get(path);
    assertEquals(
        0,
        new BigDecimal(expected).compareTo(new BigDecimal(String.valueOf(found))),
        path + ": " + found + " not " + expected);
  }

  private static String usd(String amount) {
    return "{'amount': " + amount + ", 'currency': 'USD'}";
  }

  private static String cost(String fields) {
    return posts("/api/costs", "{" + fields + "}").statusCode(201).extract().path("id");
  }

  private static String run(String on, String draws, String fills, String more) {
    return posts(
            "/api/canning/runs",
            "{'on': '%s', 'draws': [%s], 'fillTemperature': {'value': 186, 'unit': 'degF'}, 'fills': [%s], 'transmittance': 59, 'taste': 'clean'%s}"
                .formatted(on, draws, fills, more))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  private static void sells(String lot, String size, int count, String price) {
    posts(
            "/api/sales",
            "{'channel': 'farm', 'at': '2024-08-01T15:00:00Z', 'lines': [{'container': '%s', 'lot': '%s', 'count': %d, 'price': %s}], 'paid': {}}"
                .formatted(size, lot, count, usd(price)))
        .statusCode(201);
  }
}
