package org.barreltally.barrels;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.barrels.Asked.halfBarrel;
import static org.barreltally.barrels.Asked.with;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

@QuarkusTest
class PurchasesTest {

  @Inject BookRows rows;

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  /** A half barrel bought of an invented neighbour. */
  static String purchase(String tag) {
    String bought = with(halfBarrel(tag), "filledOn", null);
    bought = with(bought, "on", "'2024-05-02'");
    return with(bought, "supplier", "{'name': 'Fennimore Ash', 'details': 'Blue gate, mornings'}");
  }

  @Test
  void a_bought_barrel_comes_from_outside_and_names_its_supplier_in_the_list_alone() {
    String tag = newTag("X");
    UUID id = UUID.randomUUID();
    JsonPath answer =
        posts("/api/purchases", purchase(tag), id)
            .statusCode(201)
            .header("Location", endsWith("/api/barrels/" + tag))
            .body("id", notNullValue())
            .body("supplier", notNullValue())
            .body("barrel.tag", equalTo(tag))
            .body("barrel.netWeight.value.toDouble()", closeTo(226.5, 0.01))
            .body("barrel.grade", equalTo("amber"))
            .body(not(containsString("Fennimore")))
            .body(not(containsString("Blue gate")))
            .extract()
            .jsonPath();
    String lot = answer.getString("barrel.lot");
    assertEquals(
        "purchase",
        rows.column(
                "SELECT m.kind FROM movements m JOIN entries e ON e.movement = m.id JOIN items i ON i.id = e.item"
                    + " WHERE i.lot = '"
                    + lot
                    + "' AND e.place = 'bought'")
            .get(0));
    assertEquals(
        0, rows.number("SELECT count(*) FROM requests WHERE requests::text LIKE '%Fennimore%'"));
    assertEquals(1, rows.number("SELECT count(*) FROM requests WHERE key = '" + id + "'"));

    JsonPath list = reads("/api/purchases?limit=500").extract().jsonPath();
    String mine = "items.find { it.lot == '" + lot + "' }";
    assertEquals("Fennimore Ash", list.getString(mine + ".name"));
    assertEquals("Blue gate, mornings", list.getString(mine + ".details"));
    assertEquals("2024-05-02", list.getString(mine + ".on"));
    assertEquals(answer.getString("id"), list.getString(mine + ".id"));
    assertEquals(answer.getString("supplier"), list.getString(mine + ".supplier"));
  }

  @Test
  void the_same_name_is_the_same_supplier() {
    String first =
        posts("/api/purchases", purchase(newTag("X"))).statusCode(201).extract().path("supplier");
    String second =
        posts(
                "/api/purchases",
                with(purchase(newTag("X")), "supplier", "{'name': ' Fennimore Ash '}"))
            .statusCode(201)
            .extract()
            .path("supplier");
    assertEquals(first, second);
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM suppliers WHERE name = 'Fennimore Ash' AND details = 'Blue gate, mornings'"));
  }

  @Test
  void purchases_are_listed_in_parts() {
    for (int i = 0; i < 3; i++) {
      posts("/api/purchases", purchase(newTag("X"))).statusCode(201);
    }
    JsonPath page = reads("/api/purchases?limit=2").extract().jsonPath();
    assertEquals(2, page.getList("items").size());
    JsonPath next =
        reads("/api/purchases?limit=2&after=" + page.getString("next")).extract().jsonPath();
    assertTrue(next.getString("items[0].id").compareTo(page.getString("items[1].id")) > 0);
  }

  @Test
  void a_full_tag_takes_no_purchase() {
    String tag = Asked.filled();
    posts("/api/purchases", purchase(tag))
        .statusCode(409)
        .body("code", equalTo("barrel-not-empty"));
  }
}
