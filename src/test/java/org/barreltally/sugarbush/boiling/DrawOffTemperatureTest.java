package org.barreltally.sugarbush.boiling;

import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The day's draw-off temperature. */
@QuarkusTest
class DrawOffTemperatureTest {

  /**
   * At 0.1 MPa water boils at 372.755919 K (IAPWS-IF97, verification table), that is 99.6059 °C or
   * 211.29 °F; 7.1 °F above for 66.0 °Bx (common practice) is 218.39. For 66.9 the trade has 7.3 to
   * 7.5, so 218.59 to 218.79.
   */
  @ParameterizedTest
  @CsvSource({"1000, hPa", "100, kPa", "29.53, inHg"})
  void is_water_under_the_days_air_and_the_elevation(String pressure, String unit) {
    JsonPath at66 = asked("pressure=" + pressure + "&unit=" + unit);
    assertEquals(211.29, at66.getDouble("waterBoils.value"), 0.01);
    assertEquals(218.39, at66.getDouble("drawOff.value"), 0.01);
    assertEquals(66.0, at66.getDouble("brix"));
    JsonPath at669 = asked("brix=66.9&pressure=" + pressure + "&unit=" + unit);
    assertEquals(218.69, at669.getDouble("drawOff.value"), 0.1);
  }

  /**
   * ± 2 hPa over √3 are 1.155 hPa; near 1,000 hPa water boils 0.0277 K hotter for each (from the
   * verification values' neighbourhood: 99.606 °C at 1,000 and 99.974 at 1,013.25), 0.032 K or
   * 0.058 °F. The elevation is known to ± 0.1 °F, over √3 0.058. Together 0.08.
   */
  @Test
  void carries_what_is_in_doubt() {
    JsonPath at66 = asked("pressure=1000&unit=hPa");
    assertEquals(0.058, at66.getDouble("waterUncertainty.value"), 0.006);
    assertEquals(0.08, at66.getDouble("standardUncertainty.value"), 0.006);
  }

  @Test
  void water_that_was_measured_tells_the_pressure() {
    JsonPath measured = asked("water=211.29");
    assertEquals("water", measured.getString("from"));
    assertEquals(1000, measured.getDouble("pressure.value"), 0.3);
    assertEquals(218.39, measured.getDouble("drawOff.value"), 0.001);
    assertEquals(218.39, asked("water=99.605&waterUnit=degC").getDouble("drawOff.value"), 0.01);
  }

  /** 1,013 hPa at the sea is some 977 hPa at 1,000 ft: water boils at 210.1 °F there, not 211.9. */
  @Test
  void warns_of_pressure_corrected_to_sea_level() {
    reads("/api/draw-off-temperature?pressure=1013&unit=hPa")
        .body("cautions", hasItem(containsString("corrected to sea level: at 1,000 ft")));
    reads("/api/draw-off-temperature?pressure=1013&unit=hPa&water=208")
        .body("from", equalTo("water"))
        .body("cautions", hasItem(containsString("3.9 °F hotter than it did")));
    reads("/api/draw-off-temperature?pressure=1013&unit=hPa&water=211.5")
        .body("cautions", not(hasItem(containsString("hotter"))));
    reads("/api/draw-off-temperature?water=211")
        .body("cautions", hasItem(containsString("gloves")))
        .body("cautions", not(hasItem(containsString("sea level"))));
  }

  private static JsonPath asked(String query) {
    return reads("/api/draw-off-temperature?" + query).extract().jsonPath();
  }
}
