package org.barreltally.stock;

import static org.barreltally.stock.OpeningCsv.BARREL;
import static org.barreltally.stock.OpeningCsv.HEADER;
import static org.barreltally.stock.OpeningCsv.JARS;
import static org.barreltally.stock.ShelfFixture.get;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class OpeningStockTest {

  @Inject ShelfFixture shelf;

  private final String tag = "T" + UUID.randomUUID().toString().substring(0, 12);
  private final String lot = ShelfFixture.newLotCode();

  @AfterEach
  void the_book_is_whole() {
    shelf.assertBookIsWhole();
  }

  @Test
  void a_barrel_and_jars_stand_in_stock_afterwards() {
    String bulk =
        enter(HEADER + BARREL + JARS)
            .statusCode(201)
            .body("items", hasSize(2))
            .body("items[0].tag", equalTo(tag))
            .body("items[0].grade", equalTo("amber"))
            .body("items[0].held", equalTo(false))
            .body("items[1].lot", equalTo(lot))
            .body("items[1].tag", nullValue())
            .body("items[1].grade", equalTo("dark"))
            .body("items[1].seasons", equalTo(List.of(2023, 2024)))
            .extract()
            .path("items[0].lot");

    // 444.5 lb as the scale reads in air are 201.62 kg; buoyancy (OIML D 28) makes it 201.77 kg.
    get("/api/stock?lot=" + bulk)
        .body("items[0].kind", equalTo("barrel"))
        .body("items[0].tag", equalTo(tag))
        .body("items[0].place", equalTo("barrel-room"))
        .body("items[0].mass.value.toDouble()", closeTo(201.77, 0.02))
        .body("items[0].mass.unit", equalTo("kg"));
    get("/api/stock?lot=" + lot)
        .body("items", hasSize(1))
        .body("items[0].kind", equalTo("container"))
        .body("items[0].container", equalTo("PT"))
        .body("items[0].grade", equalTo("dark"))
        .body("items[0].onHand", equalTo(36));
    assertEquals(-36, shelf.standing("opening", lot, "PT"));
  }

  /**
   * PRACTICE pack-day sheet, worked by hand: B-01 is 40.13 gal at 68 °F from 444.5 lb at 66.9 °Bx.
   */
  @Test
  void weight_becomes_gallons_at_68_degrees() {
    String bulk = enter(HEADER + BARREL).statusCode(201).extract().path("items[0].lot");
    get("/api/stock?lot=" + bulk)
        .body("items[0].volumeAt68F.value.toDouble()", closeTo(40.13, 0.02))
        .body("items[0].volumeAt68F.unit", equalTo("gal"));
  }

  @Test
  void a_lot_may_stand_in_several_sizes_and_places() {
    enter(
            HEADER
                + JARS
                + JARS.replace("cool-room,PT,36", "barrel-room,PT,12")
                + JARS.replace("PT,36", "HP,58"))
        .statusCode(201)
        .body("items", hasSize(1));
    assertEquals(36, shelf.standing("cool-room", lot, "PT"));
    assertEquals(12, shelf.standing("barrel-room", lot, "PT"));
    assertEquals(58, shelf.standing("cool-room", lot, "HP"));
    assertEquals(
        1,
        shelf.number(
            "SELECT count(DISTINCT e.movement) FROM entries e JOIN items i ON i.id = e.item"
                + " WHERE i.lot = '"
                + lot
                + "'"));
  }

  /**
   * 473.176473 mL of syrup of 67.1 °Bx, 1.3292 kg/L between 1.3224 and 1.3348 in the CRC table for
   * 66 and 68 %.
   */
  @Test
  void grams_in_a_jar_follow_from_its_density() {
    enter(HEADER + JARS).statusCode(201);
    double grams =
        Double.parseDouble(
            shelf.text(
                "SELECT CAST(grams_each AS text) FROM items WHERE lot = '"
                    + lot
                    + "' AND container = 'PT'"));
    assertEquals(473.176473 * 1.3292, grams, 0.3);
  }

  @Test
  void jars_whose_density_nobody_wrote_down_are_taken_to_be_within_the_limits() {
    enter(HEADER + JARS.replace("67.1", "")).statusCode(201);
    assertEquals(
        "67.45 0.837",
        shelf.text(
            "SELECT concat_ws(' ', round(CAST(brix AS numeric), 2),"
                + " round(CAST(brix_u AS numeric), 3)) FROM lots WHERE code = '"
                + lot
                + "'"));
  }

  @Test
  void a_barrel_without_colour_is_held_and_off_tasting_jars_are_held() {
    enter(HEADER + BARREL.replace("62,clean", ",") + JARS.replace("clean", "buddy"))
        .statusCode(201)
        .body("items.held", equalTo(List.of(true, true)))
        .body("items[0].grade", nullValue())
        .body("items[1].grade", equalTo("processing"));
    get("/api/stock?lot=" + lot).body("items[0].held", equalTo(true));
  }

  @Test
  void a_barrel_keeps_the_lot_code_it_had() {
    enter(HEADER + BARREL.replace("TAG,,", "TAG," + lot + ","))
        .statusCode(201)
        .body("items[0].lot", equalTo(lot));
  }

  @Test
  void a_barrel_may_be_dipped_and_quantities_typed_in_any_unit() {
    enter(
            HEADER
                + BARREL.replace(
                    "486.5 lb,42 lb,,,66.9,,",
                    "220.67kg,19.05 kg,40 gal,68 degF,36 Baume,60 degF,hydrometer"))
        .statusCode(201);
  }

  @Test
  void the_same_file_under_the_same_id_is_entered_once() {
    UUID key = UUID.randomUUID();
    String first = enter(HEADER + BARREL + JARS, key).statusCode(201).extract().asString();
    String again = enter(HEADER + BARREL + JARS, key).statusCode(201).extract().asString();
    assertEquals(first, again);
    assertEquals(36, shelf.standing("cool-room", lot, "PT"));

    enter(HEADER + BARREL + JARS.replace("36", "37"), key)
        .statusCode(409)
        .body("code", equalTo("id-reused"));
  }

  @Test
  void the_same_file_under_another_id_is_refused_whole() {
    enter(HEADER + BARREL + JARS).statusCode(201);
    enter(HEADER + BARREL + JARS)
        .statusCode(400)
        .body("errors.field", hasItems("line 2, column tag", "line 3, column lot"));
  }

  @Test
  void the_example_file_can_be_entered() throws IOException {
    String example =
        Files.readString(Path.of("demo/opening-stock-example.csv"))
            .replace("X-1", tag.substring(0, 8) + "-")
            .replace("OX25", lot.substring(0, 8));
    enter(example)
        .statusCode(201)
        .body("items", hasSize(5))
        .body("items.findAll { it.held }.size()", equalTo(1));
  }

  @Test
  void a_file_of_many_rows_is_entered_in_one_go() {
    StringBuilder file = new StringBuilder(HEADER);
    for (int n = 0; n < 1000; n++) {
      file.append(JARS.replace("LOT", lot + n));
    }
    enter(file.toString()).statusCode(201).body("items", hasSize(1000));
    assertTrue(shelf.standing("cool-room", lot + "999", "PT") == 36);
  }

  private ValidatableResponse enter(String file) {
    return enter(file, UUID.randomUUID());
  }

  private ValidatableResponse enter(String file, UUID key) {
    return OpeningCsv.enter(file.replace("TAG", tag).replace("LOT", lot), key);
  }
}
