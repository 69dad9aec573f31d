package org.barreltally.barrels;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.barrels.Asked.fill;
import static org.barreltally.barrels.Asked.filled;
import static org.barreltally.barrels.Asked.halfBarrel;
import static org.barreltally.barrels.Asked.with;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class BarrelOverRestTest {

  @Inject BookRows rows;

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  @Test
  void a_filled_barrel_is_answered_whole() {
    String tag = newTag("B");
    fill(barrel(tag, 2024, "2024-03-14", 486.5, 42.0, 66.9, 62))
        .header("Location", endsWith("/api/barrels/" + tag))
        .body("tag", equalTo(tag))
        .body("lot", startsWith("S24-"))
        .body("season", equalTo(2024))
        .body("seasons", contains(2024))
        .body("state", equalTo("full"))
        .body("held", equalTo(false))
        .body("grade", equalTo("amber"))
        .body("brix.toDouble()", closeTo(66.9, 1e-9))
        // 444.5 lb in air are 201.774 kg: 444.5 × 0.45359237 × (1 - 1.2/8000) / (1 - 1.2/1328),
        // 1328.0 kg/m³ between the CRC Handbook's 1322.4 at 66 and 1334.8 at 68 °Bx
        .body("mass.value.toDouble()", closeTo(201.774, 0.01))
        .body("mass.unit", equalTo("kg"))
        // ± 0.5 lb twice: 0.5 × √2 / √3 = 0.408 lb = 0.185 kg (GUM 4.3.7)
        .body("massUncertainty.value.toDouble()", closeTo(0.185, 0.001))
        .body("netWeight.value.toDouble()", closeTo(444.5, 0.005))
        .body("netWeight.unit", equalTo("lb"))
        .body("volumeAt68F.value.toDouble()", closeTo(40.13, 0.02))
        .body("volumeAt68F.unit", equalTo("gal"))
        .body("transmittance", equalTo(62.0f))
        .body("taste", equalTo("clean"))
        .body("material", equalTo("stainless"))
        .body("filledOn", equalTo("2024-03-14"))
        .body("place", equalTo("barrel-room"))
        .body("withinDensityLimits", equalTo(true))
        .body("nearGradeLine", equalTo(false))
        .body("dipstickGap", nullValue())
        .body("cautions", empty());
    reads("/api/barrels/" + tag).body("lot", startsWith("S24-")).header("ETag", notNullValue());
  }

  @ParameterizedTest
  @CsvSource({
    "80, clean, golden, false",
    "78, clean, golden, true",
    "74.95, clean, amber, true",
    "62, clean, amber, false",
    "50, clean, amber, true",
    "40, clean, dark, false",
    "10, clean, very-dark, false",
    "62, buddy, processing, false",
    "80, scorched, processing, false"
  })
  void the_grade_follows_colour_and_taste(double tc, String taste, String grade, boolean near) {
    // classes: United States Standards for Grades of Maple Syrup (USDA AMS, 2015); meters ± 4
    // points
    fill(with(
            barrel(newTag("B"), 2024, "2024-03-14", 486.5, 42, 66.9, tc),
            "taste",
            '\'' + taste + '\''))
        .body("grade", equalTo(grade))
        .body("nearGradeLine", equalTo(near));
  }

  @ParameterizedTest
  @CsvSource({"66.0, true", "65.9, false", "68.9, true", "69.0, false"})
  void syrup_off_the_density_limits_is_taken_and_said_so(double brix, boolean within) {
    // at least 66 (21 CFR 168.140), at most 68.9
    fill(barrel(newTag("B"), 2024, "2024-03-14", 486.5, 42, brix, 62))
        .body("withinDensityLimits", equalTo(within));
  }

  @Test
  void baume_is_taken_when_it_is_called_so() {
    // 36 °Bé = 66.9 °Bx, 37 = 68.9 (UVM Extension, "Hydrometers"), modulus 145; tables agree
    // within 0.06 °Bé, which is 0.12 °Bx
    String body =
        with(
            barrel(newTag("B"), 2024, "2024-03-14", 486.5, 42, 66.9, 62),
            "density",
            "{'reading': {'value': 36.0, 'unit': 'Baume'}, 'temperature': {'value': 68, 'unit': 'degF'}, 'instrument': 'hydrometer'}");
    fill(body).body("brix.toDouble()", closeTo(66.9, 0.12));
  }

  @Test
  void a_hot_hydrometer_is_corrected() {
    // syrup of 66.9 °Bx shows 60.4 at 185 °F on a 60 °F scale (hydrometer temperature chart)
    String body =
        with(
            barrel(newTag("B"), 2024, "2024-03-14", 486.5, 42, 66.9, 62),
            "density",
            "{'reading': {'value': 60.4, 'unit': 'Brix'}, 'temperature': {'value': 185, 'unit': 'degF'}, 'instrument': 'hydrometer', 'reference': {'value': 60, 'unit': 'degF'}}");
    fill(body).body("brix.toDouble()", closeTo(66.9, 0.35));
  }

  @Test
  void a_dipped_barrel_has_the_volume_it_would_have_at_68_degrees() {
    // 100 gal at 185 °F are about 97.1 gal at 68 °F, by sucrose densities
    String body =
        with(
            with(barrel(newTag("B"), 2024, "2024-03-14", 486.5, 42, 66.9, 62), "weighing", null),
            "dipstick",
            "{'volume': {'value': 100, 'unit': 'gal'}, 'temperature': {'value': 185, 'unit': 'degF'}}");
    fill(body)
        .body("volumeAt68F.value.toDouble()", closeTo(97.1, 0.05))
        .body("dipstickGap", nullValue());
  }

  @Test
  void stick_and_scale_that_differ_too_much_are_flagged_and_the_weight_counts() {
    String cold =
        with(
            halfBarrel(newTag("B")),
            "dipstick",
            "{'volume': {'value': 21.5, 'unit': 'gal'}, 'temperature': {'value': 68, 'unit': 'degF'}}");
    fill(cold)
        .body("volumeAt68F.value.toDouble()", closeTo(20.40, 0.02))
        .body("dipstickGap.volume.value.toDouble()", closeTo(1.10, 0.02))
        .body("dipstickGap.volume.unit", equalTo("gal"))
        .body("dipstickGap.beyondUncertainty", equalTo(true))
        .body("cautions", hasItem(containsString("dipped hot")));
  }

  @Test
  void without_colour_and_taste_it_is_held_and_cannot_be_released() {
    String tag = newTag("B");
    String lot =
        fill(with(with(halfBarrel(tag), "transmittance", null), "taste", null))
            .body("held", equalTo(true))
            .body("grade", nullValue())
            .extract()
            .path("lot");
    posts("/api/barrels/" + tag + "/release", "{'reason': 'Looks fine'}")
        .statusCode(409)
        .body("code", equalTo("not-graded"));
    posts(
            "/api/barrels/" + tag + "/regrade",
            "{'on': '2024-05-02', 'transmittance': 61, 'taste': 'clean'}")
        .statusCode(200)
        .body("grade", equalTo("amber"))
        .body("held", equalTo(true));
    posts("/api/barrels/" + tag + "/release", "{'reason': 'Second taster agrees'}")
        .statusCode(200)
        .body("held", equalTo(false))
        .body("lot", equalTo(lot));
  }

  @Test
  void old_materials_carry_a_caution_and_no_verdict() {
    for (String material : new String[] {"galvanized", "other"}) {
      fill(with(halfBarrel(newTag("B")), "material", '\'' + material + '\''))
          .body("cautions", hasItem(containsString("inspector")))
          .body("cautions", everyItem(not(containsString("safe"))));
    }
  }

  @Test
  void a_half_barrel_carries_the_caution_of_head_space_where_its_size_is_known() {
    String half = halfBarrel(newTag("B"));
    fill(half).body("cautions", empty());
    fill(with(
            with(half, "tag", '"' + newTag("B") + '"'), "capacity", "{'value': 40, 'unit': 'gal'}"))
        .body("cautions", hasItem(containsString("Part filled")));
    fill(with(
            with(half, "tag", '"' + newTag("B") + '"'), "capacity", "{'value': 21, 'unit': 'gal'}"))
        .body("cautions", empty());
  }

  @Test
  void the_same_request_is_done_once() {
    String tag = newTag("B");
    UUID id = UUID.randomUUID();
    String first = posts("/api/barrels", halfBarrel(tag), id).statusCode(201).extract().asString();
    String again = posts("/api/barrels", halfBarrel(tag), id).statusCode(201).extract().asString();
    assertEquals(first, again);
    posts("/api/barrels", with(halfBarrel(tag), "transmittance", "56"), id)
        .statusCode(409)
        .body("code", equalTo("id-reused"));
    assertEquals(1, rows.number("SELECT count(*) FROM fillings WHERE tag = '" + tag + "'"));
  }

  @Test
  void a_full_tag_is_refused_and_a_drained_one_filled_again() {
    String tag = newTag("B");
    String lot = fill(halfBarrel(tag)).extract().path("lot");
    posts("/api/barrels", halfBarrel(tag))
        .statusCode(409)
        .body("code", equalTo("barrel-not-empty"))
        .body("errors[0].field", equalTo("tag"));
    posts(
            "/api/barrels/" + tag + "/write-offs",
            "{'on': '2024-05-01', 'all': true, 'cause': 'discarded', 'reason': 'Mould'}")
        .statusCode(201)
        .body("state", equalTo("drained"))
        .body("mass.value.toDouble()", closeTo(0, 0));
    String next = fill(with(halfBarrel(tag), "filledOn", "'2024-05-02'")).extract().path("lot");
    assertNotEquals(lot, next);
    reads("/api/barrels/" + tag).body("lot", equalTo(next)).body("state", equalTo("full"));
    reads("/api/lots/" + lot).body("lot", equalTo(lot));
  }

  @Test
  void barrels_are_listed_by_tag_in_parts_and_by_filter() {
    String prefix = newTag("L");
    for (int i = 0; i < 3; i++) {
      fill(with(
              halfBarrel(prefix.substring(0, 13) + "-" + i),
              "season",
              String.valueOf(1950 + i % 2)))
          .statusCode(201);
    }
    JsonPath page =
        reads("/api/barrels?season=1950&grade=amber&state=full&limit=1").extract().jsonPath();
    assertEquals(1, page.getList("items").size());
    String next = page.getString("next");
    reads("/api/barrels?season=1950&grade=amber&state=full&limit=1&after=" + next)
        .body("items", hasSize(1))
        .body("items[0].tag", not(equalTo(page.getString("items[0].tag"))));
    reads("/api/barrels?season=1950&grade=golden").body("items", empty());
    reads("/api/barrels?season=1950&state=drained")
        .body("items", empty())
        .body("next", nullValue());
    reads("/api/barrels?season=1951").body("items.season", everyItem(equalTo(1951)));
  }

  @ParameterizedTest
  @CsvSource({
    "season=abc, season", "season=20245, season", "state=half, state", "grade=blond, grade",
    "limit=0, limit", "limit=x, limit", "after=%2500, after", "after=x, after"
  })
  void a_filter_that_cannot_be_read_is_named(String query, String field) {
    Owner.asks()
        .urlEncodingEnabled(false)
        .get("/api/barrels?" + query)
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo(field));
  }

  @Test
  void a_tag_nobody_filled_is_not_found() {
    String none = newTag("N");
    Owner.asks()
        .get("/api/barrels/" + none)
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-barrel"));
    Owner.asks().get("/api/vessels/" + none).then().statusCode(404);
    posts("/api/barrels/" + none + "/hold", "{'reason': 'x'}").statusCode(404);
    posts("/api/barrels/" + none + "/weighings", "{'on': '2024-05-01', 'weighing': {}}")
        .statusCode(404);
    posts("/api/barrels/" + none + "/top-ups", Asked.topUpTo(66.9)).statusCode(404);
    posts("/api/vessels/" + none + "/washings", "{'on': '2024-05-01'}").statusCode(404);
    String seen = filled();
    reads("/api/barrels/" + seen).body("tag", equalTo(seen));
  }
}
