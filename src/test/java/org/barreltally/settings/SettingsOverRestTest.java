package org.barreltally.settings;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.people.PersonFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Settings over REST. All tests share one database, so changes here begin in years to come, a year
 * for each test, or are put back.
 */
@QuarkusTest
class SettingsOverRestTest {

  @Inject FarmSettings settings;
  @Inject Days days;
  @Inject PersonFixture people;

  @Test
  void a_farm_that_never_set_anything_has_what_a_fresh_start_knows() {
    JsonPath fresh = reads("/api/settings?at=2001-01-01T00:00:00Z").extract().jsonPath();
    assertEquals("Your sugarhouse", fresh.getString("maker"));
    assertEquals(List.of("Set your name and address in settings"), fresh.getList("address"));
    assertEquals("UTC", fresh.getString("timeZone"));
    assertEquals("USD", fresh.getString("currency"));
    assertEquals("us", fresh.getString("unitHabit"));
    assertEquals("us-federal", fresh.getString("jurisdiction"));
    assertEquals("us", fresh.getString("netContentsRegime"));
    assertEquals("warn", fresh.getString("suppliesRule"));
    assertEquals("180", fresh.getString("cappingTemperature.value"));
    assertEquals("degF", fresh.getString("cappingTemperature.unit"));
    assertEquals("0.5", fresh.getString("instruments.platformScale.value"));
    assertEquals("lb", fresh.getString("instruments.platformScale.unit"));
    assertEquals("4", fresh.getString("instruments.colorMeter"));
    assertNull(fresh.get("publicAddress"));
    assertNull(fresh.get("bestByMonths"));
  }

  @Test
  void a_change_holds_from_its_instant_and_leaves_everything_else_and_every_day_before() {
    posts(
            "/api/settings",
            """
            {'maker': 'Oxnoddle Hill Sugarhouse', 'address': ['12 Oxnoddle Hill', 'Fernby'],
             'instruments': {'benchScale': {'value': 0.5, 'unit': 'g'}}, 'bestByMonths': 24,
             'publicAddress': 'https://oxnoddle.example/syrup', 'suppliesRule': 'refuse',
             'validFrom': '2901-03-01T00:00:00Z'}
            """)
        .statusCode(200)
        .body("maker", equalTo("Oxnoddle Hill Sugarhouse"))
        .body("instruments.benchScale.value", equalTo(0.5f))
        .body("instruments.dipstick.value", equalTo(0.5f))
        .body("instruments.dipstick.unit", equalTo("gal"));
    posts(
            "/api/settings",
            "{'bestByMonths': 0, 'publicAddress': '', 'validFrom': '2901-04-01T00:00:00Z'}")
        .statusCode(200)
        .body("address", contains("12 Oxnoddle Hill", "Fernby"))
        .body("bestByMonths", nullValue())
        .body("publicAddress", nullValue());
    reads("/api/settings?at=2901-03-15T00:00:00Z")
        .body("bestByMonths", equalTo(24))
        .body("publicAddress", equalTo("https://oxnoddle.example/syrup"));
    reads("/api/settings?at=2901-02-28T23:59:59Z").body("maker", equalTo("Your sugarhouse"));
    reads("/api/settings").body("maker", equalTo("Your sugarhouse"));
    reads("/api/settings/history?limit=20")
        .body("items.name", hasItem("instruments.benchScale"))
        .body("items.name", hasItem("address"))
        .body("items.name", not(hasItem("validFrom")))
        .body("items[0].recordedBy", not(nullValue()));
  }

  @Test
  void of_two_changes_from_the_same_instant_the_later_word_counts() {
    posts("/api/settings", "{'maker': 'First', 'validFrom': '2902-01-01T00:00:00Z'}");
    posts("/api/settings", "{'maker': 'Second', 'validFrom': '2902-01-01T00:00:00Z'}");
    reads("/api/settings?at=2902-01-01T00:00:00Z").body("maker", equalTo("Second"));
  }

  @Test
  void a_change_cannot_begin_in_the_past_because_papers_of_that_time_stand() {
    posts("/api/settings", "{'maker': 'Another', 'validFrom': '2026-01-01T00:00:00Z'}")
        .statusCode(422)
        .body("code", equalTo("change-backdated"))
        .body("errors.field", contains("validFrom"));
    reads("/api/settings?at=2026-01-02T00:00:00Z").body("maker", equalTo("Your sugarhouse"));
  }

  @Test
  void the_limits_and_instruments_of_the_domain_follow() {
    posts(
        "/api/settings",
        """
        {'jurisdiction': 'vermont', 'netContentsRegime': 'eu',
         'instruments': {'probe': {'value': 1, 'unit': 'degC'}, 'colorMeter': 2.5,
                         'dipstick': {'value': 2, 'unit': 'L'}},
         'validFrom': '2903-01-01T00:00:00Z'}
        """);
    SettingsAt then = settings.at(Instant.parse("2903-06-01T00:00:00Z"));
    assertEquals(66.9, then.jurisdiction().brixMin());
    assertEquals(NetContentsRegime.EU, then.netContentsRegime());
    assertEquals(1, then.instruments().halfWidth(InstrumentKind.PROBE));
    assertEquals(2.5, then.instruments().halfWidth(InstrumentKind.COLOR_METER));
    assertEquals(2000, then.instruments().halfWidth(InstrumentKind.DIPSTICK));
    assertEquals(66.0, settings.jurisdiction().brixMin());
    assertEquals(
        Instruments.usual(), settings.at(Instant.parse("2001-01-01T00:00:00Z")).instruments());
  }

  /** 7.2 °F are 4 °C; ± 3 percent of 1,000 mL are 30 mL, over √3 17.32. */
  @Test
  void what_the_sugarhouse_knows_changes_part_by_part() {
    posts(
            "/api/settings",
            """
            {'sugarhouse': {'tankGaugePercent': 3, 'drawOffElevation': {'value': 7.2, 'unit': 'degF'}},
             'validFrom': '2905-01-01T00:00:00Z'}
            """)
        .statusCode(200)
        .body("sugarhouse.tankGaugePercent", equalTo(3))
        .body("sugarhouse.sapBrix.value", equalTo(0.2f))
        .body("sugarhouse.barometer.unit", equalTo("hPa"));
    SettingsAt then = settings.at(Instant.parse("2905-06-01T00:00:00Z"));
    assertEquals(4, then.sugarhouse().elevationCelsius().value(), 1e-9);
    assertEquals(17.32, then.sugarhouse().gauged(Quantity.of(1, Unit.L)).u(), 0.005);
    SettingsAt before = settings.at(Instant.parse("2001-01-01T00:00:00Z"));
    assertEquals(28.87, before.sugarhouse().gauged(Quantity.of(1, Unit.L)).u(), 0.005);
  }

  @Test
  void the_day_at_the_farm_follows_its_zone_from_then_on_and_not_before() {
    posts("/api/settings", "{'timeZone': 'Pacific/Auckland', 'validFrom': '2904-01-01T00:00:00Z'}")
        .statusCode(200);
    posts("/api/settings", "{'timeZone': 'UTC', 'validFrom': '2904-12-31T00:00:00Z'}");
    assertEquals(LocalDate.of(2904, 6, 2), days.dateOf(Instant.parse("2904-06-01T13:00:00Z")));
    assertEquals(LocalDate.of(2903, 6, 1), days.dateOf(Instant.parse("2903-06-01T13:00:00Z")));
    assertEquals(Instant.parse("2904-05-31T12:00:00Z"), days.beginning(LocalDate.of(2904, 6, 1)));
  }

  @Test
  void a_changed_capping_temperature_is_minded_at_the_next_what_if() {
    String tag = newTag("S");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    String run =
        "{'on': '2026-06-20', 'draws': [{'barrel': '%s', 'all': true}], 'fillTemperature': {'value': 185, 'unit': 'degF'}, 'fills': [{'container': 'PT', 'rest': true}]}"
            .formatted(tag);
    posts("/api/canning/what-if", run).body("cautions.join(' ')", not(containsString("capped at")));
    try {
      posts("/api/settings", "{'cappingTemperature': {'value': 190, 'unit': 'degF'}}")
          .statusCode(200);
      posts("/api/canning/what-if", run)
          .body("cautions.join(' ')", containsString("capped at 190 degF or above"));
    } finally {
      posts("/api/settings", "{'cappingTemperature': {'value': 180, 'unit': 'degF'}}")
          .statusCode(200);
    }
    posts("/api/canning/what-if", run).body("cautions.join(' ')", not(containsString("capped at")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"canning", "table", "packing", "bookkeeper"})
  void only_the_owner_changes_settings_and_everybody_reads_them(String role) {
    String name = people.with(role, "a long enough password");
    var asks = given().auth().preemptive().basic(name, "a long enough password");
    asks.get("/api/settings").then().statusCode(200);
    given()
        .auth()
        .preemptive()
        .basic(name, "a long enough password")
        .contentType("application/json")
        .body("{\"maker\": \"Not mine\", \"validFrom\": \"2905-01-01T00:00:00Z\"}")
        .post("/api/settings")
        .then()
        .statusCode(403)
        .contentType("application/problem+json");
    reads("/api/settings?at=2905-01-02T00:00:00Z").body("maker", not(equalTo("Not mine")));
  }
}
