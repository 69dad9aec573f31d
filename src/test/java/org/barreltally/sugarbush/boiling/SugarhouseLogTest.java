package org.barreltally.sugarbush.boiling;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.sugarbush.boiling.Woods.boil;
import static org.barreltally.sugarbush.boiling.Woods.density;
import static org.barreltally.sugarbush.boiling.Woods.feed;
import static org.barreltally.sugarbush.boiling.Woods.sap;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Volumes, tanks and lists of the sugarhouse's log. */
@QuarkusTest
class SugarhouseLogTest {

  @Inject Production production;

  @AfterEach
  void the_book_is_sound() {
    SoundBook.check();
  }

  /**
   * Cold sap swells a little and hot syrup shrinks much: water of 36 °F weighs 0.99994 and of 68 °F
   * 0.99821 kg/L, so 620 gal are 621.1 at 68 °F; syrup of 185 °F comes to 0.971 of its volume
   * (hydrometer charts: 0.972), so 10 L are 9.71 L or 2.565 gal.
   */
  @Test
  void volumes_are_those_at_68_degrees() {
    String bush = Woods.ownBush(2019, 1);
    String cold =
        sap("2019-03-10", bush, 1, 2.2, newTag("T"))
            .replace("'value': 1.000, 'unit': 'L'", "'value': 620, 'unit': 'gal'")
            .replace("'value': 68", "'value': 36");
    assertEquals(
        621.1,
        posts("/api/sap", cold).extract().jsonPath().getDouble("amount.volumeAt68F.value"),
        0.15);
    String boil = posts("/api/boils", boil("2019-03-10", "")).extract().path("id");
    String hot =
        "{'at': '2019-03-10T13:00:00Z', 'volume': {'value': 10, 'unit': 'L'}, 'temperature': {'value': 185, 'unit': 'degF'}, 'hotIntoJars': true, %s}"
            .formatted(density(66.9));
    assertEquals(
        2.565,
        posts("/api/boils/" + boil + "/draw-offs", hot)
            .statusCode(201)
            .extract()
            .jsonPath()
            .getDouble("drawOffs[0].amount.volumeAt68F.value"),
        0.005);
  }

  @Test
  void said_twice_is_logged_once() {
    String bush = Woods.ownBush(2020, 1);
    String body = sap("2020-03-10", bush, 100, 2, newTag("T"));
    UUID key = UUID.randomUUID();
    String first = posts("/api/sap", body, key).statusCode(201).extract().path("id");
    posts("/api/sap", body, key).statusCode(201).body("id", equalTo(first));
    posts("/api/sap/" + first + "/reversal", "{'reason': 'Tried'}").statusCode(201);
    reads("/api/sap/" + first).body("reversed.reason", equalTo("Tried"));
    assertEquals(0, production.of(2020).sap().value());
  }

  @Test
  void lists_go_on_where_they_left_off() {
    String bush = Woods.ownBush(2015, 1);
    for (int litres = 1; litres <= 3; litres++) {
      posts("/api/sap", sap("2015-03-10", bush, 100 * litres, 2, newTag("T"))).statusCode(201);
    }
    JsonPath first = reads("/api/sap?season=2015&limit=2").extract().jsonPath();
    assertEquals(300, first.getDouble("items[0].volume.value"), "the newest first");
    assertEquals(200, first.getDouble("items[1].volume.value"));
    reads("/api/sap?season=2015&limit=2&after=" + first.getString("next"))
        .body("items", hasSize(1))
        .body("items[0].volume.value", equalTo(100.0f))
        .body("next", nullValue());
  }

  /** Sap boiled straight from the trees is sap of its bush all the same. */
  @Test
  void sap_without_a_tank_counts_for_its_bush() {
    String bush = Woods.ownBush(2021, 10);
    String straight =
        feed(100, 2, "none")
            .replace("'tank': 'none'", "'bush': '" + bush + "'")
            .replace("concentrate", "sap");
    posts("/api/boils", boil("2021-03-10", ", 'feeds': [" + straight + "]"))
        .statusCode(201)
        .body("feeds[0].bush", equalTo(bush))
        .body("shortTanks", empty());
    assertEquals(100_000, production.of(2021).sap().value(), 0.1);
  }
}
