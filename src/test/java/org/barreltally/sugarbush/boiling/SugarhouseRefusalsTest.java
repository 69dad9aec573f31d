package org.barreltally.sugarbush.boiling;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.posts;
import static org.barreltally.sugarbush.boiling.Woods.boil;
import static org.barreltally.sugarbush.boiling.Woods.concentrate;
import static org.barreltally.sugarbush.boiling.Woods.density;
import static org.barreltally.sugarbush.boiling.Woods.drawn;
import static org.barreltally.sugarbush.boiling.Woods.feed;
import static org.barreltally.sugarbush.boiling.Woods.sap;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each rule that says no to an entry of the sugarhouse's log names the field and leaves nothing.
 */
@QuarkusTest
class SugarhouseRefusalsTest {

  private static final int SEASON = 2012;
  private static final String DAY = "2012-03-14";

  @Inject BookRows rows;

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'on': '2012-03-14'| 'on': '2999-03-14'| 400| in-the-future| on",
        "'on': '2012-03-14'| 'on': null| 400| invalid-field| on",
        "'on': '2012-03-14'| 'on': '2012-03-14', 'season': 2014| 400| invalid-field| season",
        "'bush': 'BUSH'| 'bush': 'Nowhere'| 422| unknown-bush| bush",
        "'bush': 'BUSH'| 'bush': null| 400| invalid-field| bush",
        "'tank': 'T'| 'tank': ' '| 400| invalid-field| tank",
        "'tank': 'T'| 'tank': null| 400| invalid-field| tank",
        "'brix': 2.00| 'brix': 0| 422| not-sap| brix",
        "'brix': 2.00| 'brix': 0.09| 422| not-sap| brix",
        "'brix': 2.00| 'brix': -1| 422| not-sap| brix",
        "'brix': 2.00| 'brix': 12.1| 422| not-sap| brix",
        "'brix': 2.00| 'brix': 66.9| 422| not-sap| brix",
        "'brix': 2.00| 'brix': null| 400| invalid-field| brix",
        "'brix': 2.00| 'brix': 2.0000000000001| 400| invalid-field| brix",
        "'value': 500.000| 'value': 0| 400| invalid-field| volume",
        "'value': 500.000| 'value': -5| 400| invalid-field| volume",
        "'value': 500.000| 'value': 1000001| 400| invalid-field| volume",
        "'unit': 'L'| 'unit': 'kg'| 400| invalid-field| volume.unit",
        "'temperature': {'value': 68, 'unit': 'degF'}| 'temperature': null| 400| volume-without-temperature| temperature",
        "'value': 68| 'value': 20| 400| invalid-field| temperature",
        "'unit': 'degF'| 'unit': 'lb'| 400| invalid-field| temperature.unit",
        "'tank': 'T'| 'tank': 'T', 'note': ' '| 400| invalid-field| note",
        "'tank': 'T'| 'tank': 'T', 'colour': 'clear'| 400| unknown-field| colour",
      })
  void sap_that_cannot_be(String right, String wrong, int status, String code, String field) {
    String bush = Woods.ownBush(SEASON, 10);
    String body = sap(DAY, "BUSH", 500, 2, "T");
    refused("/api/sap", swap(body, right, wrong).replace("BUSH", bush), status, code, field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'on': '2012-03-14'| 'on': '2999-03-14'| 400| in-the-future| on",
        "'brix': 8.00| 'brix': 2.0| 422| concentrate-not-stronger| concentrate.brix",
        "'value': 250.000| 'value': 1000| 422| concentrate-not-stronger| concentrate.volume",
        "'brix': 8.00| 'brix': 45.1| 422| not-sap| concentrate.brix",
        "'brix': 2.00| 'brix': 0| 422| not-sap| sap.brix",
        "'tank': 'C'| 'tank': ''| 400| invalid-field| concentrate.tank",
        "'on': '2012-03-14'| 'on': '2012-03-14', 'permeateBrix': 5.1| 422| not-sap| permeateBrix",
        "'on': '2012-03-14'| 'on': '2012-03-14', 'permeateBrix': -0.1| 422| not-sap| permeateBrix",
      })
  void concentrate_that_cannot_be(
      String right, String wrong, int status, String code, String field) {
    String body = concentrate(DAY, 1000, 2, "T", 250, 8, "C");
    refused("/api/concentrates", swap(body, right, wrong), status, code, field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'on': '2012-03-14'| 'on': '2012-03-15'| 400| invalid-field| startedAt",
        "'startedAt': '2012-03-14T12:00:00Z'| 'startedAt': null| 400| invalid-field| startedAt",
        "'targetBrix': 66.9| 'targetBrix': 63.9| 400| invalid-field| targetBrix",
        "'targetBrix': 66.9| 'targetBrix': 69.1| 400| invalid-field| targetBrix",
        "'of': 'concentrate'| 'of': 'syrup'| 400| invalid-field| feeds[0].of",
        "'of': 'concentrate'| 'of': null| 400| invalid-field| feeds[0].of",
        "'feeds': [| 'feeds': [null, | 400| invalid-field| feeds[0].of",
        "'of': 'concentrate'| 'of': 'sap'| 422| not-sap| feeds[0].brix",
        "'tank': 'C'| 'tank': null| 400| invalid-field| feeds[0].tank",
        "'tank': 'C'| 'bush': 'Nowhere'| 422| unknown-bush| feeds[0].bush",
        "'targetBrix': 66.9| 'endedAt': '2012-03-14T12:00:00Z'| 400| invalid-field| endedAt",
        "'targetBrix': 66.9| 'endedAt': '2012-03-18T12:00:01Z'| 400| invalid-field| endedAt",
        "'targetBrix': 66.9| 'pressure': {'value': 29.92, 'unit': 'hPa'}| 422| outside-pressure-range| pressure",
        "'targetBrix': 66.9| 'pressure': {'value': 14.7, 'unit': 'psi'}| 400| invalid-field| pressure.unit",
        "'targetBrix': 66.9| 'pressure': 986| 400| wrong-type| pressure",
        "'targetBrix': 66.9| 'waterBoils': {'value': 219, 'unit': 'degF'}| 400| invalid-field| waterBoils",
        "'targetBrix': 66.9| 'waterBoils': {'value': 99, 'unit': 'Brix'}| 400| invalid-field| waterBoils.unit",
      })
  void a_boil_that_cannot_be(String right, String wrong, int status, String code, String field) {
    String body = boil(DAY, ", 'feeds': [" + feed(100, 15, "C") + "]");
    refused("/api/boils", swap(body, right, wrong), status, code, field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'at': '2012-03-14T13:00:00Z'| 'at': '2012-03-14T11:59:00Z'| 400| invalid-field| at",
        "'at': '2012-03-14T13:00:00Z'| 'at': '2012-03-14T16:01:00Z'| 400| invalid-field| at",
        "'at': '2012-03-14T13:00:00Z'| 'at': '2999-03-14T13:00:00Z'| 400| in-the-future| at",
        "DENSITY| 'note': 'none read'| 400| invalid-field| density",
        "'value': 66.90| 'value': 36| 422| looks-like-baume| density.reading",
        "'value': 66.90| 'value': 49.9| 422| not-syrup| density.reading",
        "'value': 66.90| 'value': 70.1| 422| not-syrup| density.reading",
        "'unit': 'Brix'| 'unit': 'Baume'| 400| invalid-field| density.reading.unit",
        "'instrument': 'refractometer'| 'instrument': null| 400| invalid-field| density.instrument",
        "'value': 68, 'unit': 'degF'| 'value': 190, 'unit': 'degF'| 422| outside-instrument-range| density.temperature",
        "'barrel': 'B-77'| 'barrel': null| 400| invalid-field| barrel",
        "'barrel': 'B-77'| 'barrel': 'B-77', 'hotIntoJars': true| 400| invalid-field| barrel",
        "'value': 30.000| 'value': 0| 400| invalid-field| weight",
        "'unit': 'kg'| 'unit': 'gal'| 400| invalid-field| weight",
        "'barrel': 'B-77'| 'barrel': 'B-77', 'volume': {'value': -8, 'unit': 'gal'}| 400| invalid-field| volume",
        "'barrel': 'B-77'| 'barrel': 'B-77', 'volume': {'value': 8, 'unit': 'gal'}| 400| volume-without-temperature| temperature",
        "'weight': {'value': 30.000, 'unit': 'kg'}| 'note': 'x'| 400| invalid-field| volume",
        "'weight': {'value': 30.000, 'unit': 'kg'}| 'volume': {'value': 8, 'unit': 'gal'}| 400| volume-without-temperature| temperature",
        "'weight': {'value': 30.000, 'unit': 'kg'}| 'volume': {'value': 8, 'unit': 'gal'}, 'temperature': {'value': 219, 'unit': 'degF'}| 422| too-hot-for-volume| temperature",
      })
  void a_draw_off_that_cannot_be(
      String right, String wrong, int status, String code, String field) {
    String boil = started();
    String body = drawn("2012-03-14T13:00:00Z", 30);
    refused(
        "/api/boils/" + boil + "/draw-offs",
        swap(body, right.replace("DENSITY", density(66.9)), wrong),
        status,
        code,
        field);
  }

  @Test
  void what_is_not_there_or_was_taken_back_takes_nothing() {
    String boil = started();
    String gone = UUID.randomUUID().toString();
    refused(
        "/api/boils/" + gone + "/notes", "{'note': 'x'}", 404, "unknown-sugarhouse-entry", null);
    refused(
        "/api/boils/" + gone + "/reversal",
        "{'reason': 'x'}",
        404,
        "unknown-sugarhouse-entry",
        null);
    refused(
        "/api/sap/" + gone + "/reversal", "{'reason': 'x'}", 404, "unknown-sugarhouse-entry", null);
    refused(
        "/api/concentrates/" + boil + "/reversal",
        "{'reason': 'a boil is no concentrate'}",
        404,
        "unknown-sugarhouse-entry",
        null);
    String path = "/api/boils/" + boil;
    refused(
        path + "/parts/" + gone + "/reversal",
        "{'reason': 'x'}",
        404,
        "unknown-sugarhouse-entry",
        null);
    refused(path + "/reversal", "{}", 400, "invalid-field", "reason");
    refused(path + "/notes", "{}", 400, "invalid-field", "note");
    refused(
        path + "/notes", "{'niter': '" + "x".repeat(1001) + "'}", 400, "invalid-field", "niter");
    posts(path + "/reversal", "{'reason': 'Another day'}").statusCode(201);
    refused(path + "/reversal", "{'reason': 'again'}", 409, "entry-reversed", null);
    refused(path + "/feeds", feed(100, 8, "C"), 409, "entry-reversed", null);
    refused(path + "/draw-offs", drawn("2012-03-14T13:00:00Z", 30), 409, "entry-reversed", null);
  }

  @Test
  void a_bush_is_made_known_once_and_counted_where_it_is_ones_own() {
    String own = Woods.ownBush(SEASON, 10);
    String leased = Woods.leasedBush(SEASON, 10);
    refused(
        "/api/bushes",
        "{'name': '" + own.toUpperCase(java.util.Locale.ROOT) + "'}",
        409,
        "bush-exists",
        "name");
    refused("/api/bushes", "{'name': ''}", 400, "invalid-field", "name");
    String taps = "{'season': 2012, 'from': '2012-02-01', 'count': 5}";
    refused("/api/bushes/" + leased + "/taps", taps, 404, "unknown-bush", null);
    String path = "/api/bushes/" + own + "/taps";
    refused(path, taps.replace("'count': 5", "'count': -5"), 400, "invalid-field", "count");
    refused(path, taps.replace("'season': 2012, ", ""), 400, "invalid-field", "season");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/api/draw-off-temperature| 400| pressure",
        "/api/draw-off-temperature?pressure=986| 400| unit",
        "/api/draw-off-temperature?pressure=986&unit=psi| 400| unit",
        "/api/draw-off-temperature?pressure=NaN&unit=hPa| 400| pressure",
        "/api/draw-off-temperature?pressure=-986&unit=hPa| 422| pressure",
        "/api/draw-off-temperature?pressure=1e3&unit=hPa| 400| pressure",
        "/api/draw-off-temperature?pressure=29.92&unit=kPa| 422| pressure",
        "/api/draw-off-temperature?water=150| 400| water",
        "/api/draw-off-temperature?water=212&waterUnit=degC| 400| water",
        "/api/draw-off-temperature?water=212&waterUnit=K| 400| waterUnit",
        "/api/draw-off-temperature?water=212&brix=36| 400| brix",
        "/api/draw-off-temperature?water=212&brix=x| 400| brix",
        "/api/sugarbush-season?season=26| 400| season",
        "/api/tanks?season=soon| 400| season",
        "/api/bushes?season=0| 400| season",
        "/api/boils?season=99999| 400| season",
        "/api/sap?limit=0| 400| limit",
        "/api/concentrates?after=x| 400| after",
      })
  void what_is_asked_amiss_is_refused_by_name(String path, int status, String field) {
    asks().get(path).then().statusCode(status).body("errors[0].field", equalTo(field));
  }

  private static String started() {
    return posts("/api/boils", boil(DAY, ", 'endedAt': '2012-03-14T16:00:00Z'"))
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static String swap(String body, String right, String wrong) {
    int first = body.lastIndexOf(right);
    assertNotEquals(-1, first, () -> "the row does not fit: " + right);
    return body.substring(0, first) + wrong + body.substring(first + right.length());
  }

  private void refused(String path, String body, int status, String code, String field) {
    Map<String, String> before = rows.fingerprint();
    var answer = posts(path, body).statusCode(status).body("code", equalTo(code));
    if (field != null) {
      answer.body("errors[0].field", equalTo(field));
    }
    assertEquals(before, rows.fingerprint());
  }
}
