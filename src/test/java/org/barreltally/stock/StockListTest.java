package org.barreltally.stock;

import static org.barreltally.stock.ShelfFixture.get;
import static org.barreltally.stock.ShelfFixture.post;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class StockListTest {

  @Inject ShelfFixture shelf;

  @Test
  void jars_are_listed_by_lot_and_size_without_what_is_used_up() {
    String lot = shelf.lotWith(24, "PT", "HP");
    post(
            "/api/stock/write-offs",
            """
            {"place": "cool-room", "container": "HP", "lot": "%s", "count": 24, "cause": "given"}"""
                .formatted(lot))
        .statusCode(201);
    get("/api/stock?lot=" + lot)
        .statusCode(200)
        .body("items", hasSize(1))
        .body("items[0].place", equalTo("cool-room"))
        .body("items[0].kind", equalTo("container"))
        .body("items[0].container", equalTo("PT"))
        .body("items[0].grade", equalTo("amber"))
        .body("items[0].onHand", equalTo(24))
        .body("items[0].held", equalTo(false))
        .body("items[0].mass", nullValue())
        .body("items[0].tag", nullValue());
  }

  @Test
  void filters_narrow_the_list() {
    String lot = shelf.lotWith(24, "PT", "HP");
    get("/api/stock?container=HP&limit=500")
        .body("items.container", everyItem(equalTo("HP")))
        .body("items.lot", hasItem(lot));
    get("/api/stock?place=barrel-room&limit=500").body("items.lot", not(hasItem(lot)));
    get("/api/stock?grade=dark&limit=500").body("items.grade", everyItem(equalTo("dark")));
    get("/api/stock?grade=amber&lot=" + lot).body("items", hasSize(2));
  }

  @ParameterizedTest
  @CsvSource({
    "place=moon, unknown-place, place",
    "place=broken, unknown-place, place",
    "container=PINT, unknown-container, container",
    "lot=NOWHERE, unknown-lot, lot",
    "grade=pale, invalid-field, grade",
    "limit=0, invalid-field, limit",
    "after=xyz, invalid-field, after"
  })
  void an_unknown_filter_is_refused_by_name(String query, String code, String field) {
    get("/api/stock?" + query)
        .statusCode(400)
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field));
  }

  @Test
  void parts_of_the_list_make_up_the_whole() {
    shelf.lotWith(3, "PT", "HP", "QT", "GAL");
    shelf.lotWith(3, "PT", "HP", "QT", "GAL");
    List<String> whole = keys(get("/api/stock?limit=500").extract().jsonPath());
    List<String> pieced = new ArrayList<>();
    String after = "";
    do {
      JsonPath part = get("/api/stock?limit=3" + after).extract().jsonPath();
      pieced.addAll(keys(part));
      after = part.getString("next") == null ? null : "&after=" + part.getString("next");
    } while (after != null && pieced.size() < 500);
    assertTrue(whole.size() >= 8);
    assertEquals(whole, pieced.subList(0, whole.size()));
    assertEquals(pieced.stream().sorted().toList(), pieced);
  }

  private static List<String> keys(JsonPath page) {
    return page
        .getList(
            "items.collect { it.place + ' ' + it.kind + ' ' + (it.container ?: it.tag) + ' ' + (it.lot ?: '?') }")
        .stream()
        .map(String.class::cast)
        .toList();
  }
}
