package org.barreltally.barrels;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.barrels.Asked.halfBarrel;
import static org.barreltally.barrels.Asked.with;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a filling is refused for: each names the rule and the field, and leaves nothing behind. */
@QuarkusTest
class FillingRefusalsTest {

  private static final String LONG = "x".repeat(5000);

  @Inject BookRows rows;

  private Map<String, String> before;

  @BeforeEach
  void look() {
    before = rows.fingerprint();
  }

  @AfterEach
  void nothing_is_stored() {
    assertEquals(before, rows.fingerprint());
  }

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  /** Columns: path, the JSON put there (none takes it away), status, code, field named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          weighing.gross.unit           | 'stone'               | 400 | unknown-unit       | weighing.gross.unit
          weighing.gross.unit           | 'LB'                  | 400 | unknown-unit       | weighing.gross.unit
          weighing.gross.unit           | 'gal'                 | 400 | invalid-field      | weighing.gross.unit
          weighing.gross.unit           |                       | 400 | invalid-field      | weighing.gross.unit
          weighing.gross.unit           | 5                     | 400 | wrong-type         | weighing.gross.unit
          weighing.gross.value          | null                  | 400 | invalid-field      | weighing.gross.value
          weighing.gross.value          | '268'                 | 400 | wrong-type         | weighing.gross.value
          weighing.gross.value          | true                  | 400 | wrong-type         | weighing.gross.value
          weighing.gross.value          | 268.1234567891        | 400 | too-many-digits    | weighing.gross.value
          weighing.gross.value          | 1e30                  | 400 | too-many-digits    | weighing.gross.value
          weighing.gross.value          | 1e300                 | 400 | invalid-field      | weighing.gross.value
          weighing.gross.value          | 99999999999           | 400 | invalid-field      | weighing.gross
          weighing.gross.value          | 36.2                  | 422 | gross-under-tare   | weighing.gross
          weighing.gross.value          | 41.5                  | 422 | gross-under-tare   | weighing.gross
          weighing.gross.value          | -268                  | 422 | gross-under-tare   | weighing.gross
          weighing.gross                | 268                   | 400 | wrong-type         | weighing.gross
          weighing.gross                |                       | 400 | invalid-field      | weighing.gross
          weighing.tare                 |                       | 400 | invalid-field      | weighing.tare
          weighing.tare.value           | -1                    | 400 | invalid-field      | weighing.tare
          weighing.net                  | {'value':1}           | 400 | unknown-field      | weighing.net
          weighing                      |                       | 400 | invalid-field      | weighing
          weighing                      | [1, 2]                | 400 | wrong-type         | weighing
          dipstick                      | {'volume': {'value': 21.5, 'unit': 'gal'}} | 400 | volume-without-temperature | dipstick.temperature
          dipstick                      | {'volume': {'value': 21.5, 'unit': 'gal'}, 'temperature': null} | 400 | volume-without-temperature | dipstick.temperature
          dipstick                      | {'volume': {'value': 21.5, 'unit': 'lb'}, 'temperature': {'value': 68, 'unit': 'degF'}} | 400 | invalid-field | dipstick.volume.unit
          dipstick                      | {'volume': {'value': 0, 'unit': 'gal'}, 'temperature': {'value': 68, 'unit': 'degF'}} | 400 | invalid-field | dipstick.volume
          dipstick                      | {'volume': {'value': 21.5, 'unit': 'gal'}, 'temperature': {'value': 21.5, 'unit': 'gal'}} | 400 | invalid-field | dipstick.temperature
          dipstick                      | {'volume': {'value': 21.5, 'unit': 'gal'}, 'temperature': {'value': 300, 'unit': 'degF'}} | 400 | invalid-field | dipstick.temperature
          dipstick                      | {'temperature': {'value': 68, 'unit': 'degF'}} | 400 | invalid-field | dipstick.volume
          density.reading.value         | 36.2                  | 422 | looks-like-baume   | density.reading
          density.reading.value         | 30                    | 422 | looks-like-baume   | density.reading
          density.reading.value         | 40                    | 422 | looks-like-baume   | density.reading
          density.reading.value         | 12                    | 422 | not-syrup          | density.reading
          density.reading.value         | 75                    | 422 | not-syrup          | density.reading
          density.reading.unit          | 'Baume'               | 400 | invalid-field      | density.reading.unit
          density.reading.unit          | 'lb'                  | 400 | invalid-field      | density.reading.unit
          density.reading               |                       | 400 | invalid-field      | density.reading
          density.temperature           |                       | 400 | invalid-field      | density.temperature
          density.temperature.value     | 400                   | 400 | invalid-field      | density.temperature
          density.temperature.unit      | 'degK'                | 400 | unknown-unit       | density.temperature.unit
          density.reference             | {'value': 1, 'unit': 'lb'} | 400 | invalid-field | density.reference.unit
          density.instrument            |                       | 400 | invalid-field      | density.instrument
          density.instrument            | 'eye'                 | 400 | invalid-field      | density.instrument
          density.instrument            | 1                     | 400 | wrong-type         | density.instrument
          density                       |                       | 400 | invalid-field      | density
          season                        | 2999                  | 400 | invalid-field      | season
          season                        | 2025                  | 400 | invalid-field      | season
          season                        | 24                    | 400 | invalid-field      | season
          season                        | '2026'                | 400 | wrong-type         | season
          season                        | 2024.5                | 400 | wrong-type         | season
          season                        | 99999999999           | 400 | out-of-range       | season
          season                        |                       | 400 | invalid-field      | season
          filledOn                      | '2999-01-01'          | 400 | in-the-future      | filledOn
          filledOn                      | '1799-01-01'          | 400 | invalid-field      | filledOn
          filledOn                      | '2024-02-30'          | 400 | invalid-field      | filledOn
          filledOn                      | '14 March'            | 400 | invalid-field      | filledOn
          filledOn                      | 20240314              | 400 | wrong-type         | filledOn
          filledOn                      |                       | 400 | invalid-field      | filledOn
          material                      | 'wood'                | 400 | invalid-field      | material
          material                      | ''                    | 400 | invalid-field      | material
          material                      | 0                     | 400 | wrong-type         | material
          material                      |                       | 400 | invalid-field      | material
          tag                           | 'B 01'                | 400 | invalid-field      | tag
          tag                           | ''                    | 400 | invalid-field      | tag
          tag                           | '../etc'              | 400 | invalid-field      | tag
          tag                           | 'B-0123456789012345'  | 400 | invalid-field      | tag
          tag                           | ['B-01']              | 400 | wrong-type         | tag
          tag                           |                       | 400 | invalid-field      | tag
          transmittance                 | true                  | 400 | wrong-type         | transmittance
          transmittance                 | '62'                  | 400 | wrong-type         | transmittance
          transmittance                 | 101                   | 400 | invalid-field      | transmittance
          transmittance                 | -0.1                  | 400 | invalid-field      | transmittance
          taste                         | 'yummy'               | 400 | invalid-field      | taste
          taste                         | false                 | 400 | wrong-type         | taste
          colour                        | 'amber'               | 400 | unknown-field      | colour
          grade                         | 'golden'              | 400 | unknown-field      | grade
          capacity                      | {'value': 20, 'unit': 'gal'}  | 422 | over-capacity | weighing.gross
          capacity                      | {'value': -1, 'unit': 'gal'}  | 400 | invalid-field | capacity
          capacity                      | {'value': 40, 'unit': 'lb'}   | 400 | invalid-field | capacity.unit
          """)
  void a_field_that_cannot_be_right_is_named(
      String path, String value, int status, String code, String field) {
    refused(with(halfBarrel(newTag("R")), path, value), status, code)
        .body("errors[0].field", equalTo(field))
        .body("errors.message", not(hasItem((Object) null)));
  }

  @Test
  void baume_taken_for_brix_is_offered_its_conversion() {
    // 36.2 °Bé are 67.3 °Bx: specific gravity 145 / (145 - 36.2) = 1.33272 at 20/20, CRC Handbook
    refused(with(halfBarrel(newTag("R")), "density.reading.value", "36.2"), 422, "looks-like-baume")
        .body("detail", containsString("67.3 °Bx"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tag", "material", "taste", "filledOn", "density.instrument"})
  void a_text_of_five_thousand_characters_is_refused(String path) {
    refused(with(halfBarrel(newTag("R")), path, '"' + LONG + '"'), 400, "invalid-field")
        .body("errors[0].field", equalTo(path))
        .body(not(containsString(LONG)));
  }

  @Test
  void a_field_name_of_five_thousand_characters_is_refused() {
    String named = halfBarrel(newTag("R")).replaceFirst("'tag'", "'" + LONG + "'");
    refused(named, 400, "too-large");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'tag': 'R-01', |broken-json",
        "{'tag': 'R-01'} {}|broken-json",
        "{'tag': 'R-01', 'tag': 'R-02'}|duplicate-field",
        "{'transmittance': 1e999}|invalid-field",
        "{'transmittance': NaN}|broken-json",
        "[]|wrong-type",
        "'R-01'|wrong-type",
        "7|wrong-type"
      })
  void what_is_no_record_is_refused(String body, String code) {
    refused(body, 400, code);
  }

  @Test
  void nothing_at_all_is_refused() {
    posts("/api/barrels", "").statusCode(400).body("code", equalTo("body-missing"));
    posts("/api/barrels", "null").statusCode(400).body("code", equalTo("body-missing"));
    posts("/api/barrels", "{}").statusCode(400).body("errors[0].field", equalTo("filledOn"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "7", "not-a-uuid", "017f22e2-79b0-7cc3-98c4"})
  void without_a_request_id_it_is_refused(String id) {
    Owner.asks()
        .contentType("application/json")
        .header("Idempotency-Key", id)
        .body(halfBarrel(newTag("R")).replace('\'', '"'))
        .post("/api/barrels")
        .then()
        .statusCode(400)
        .body("code", equalTo("id-missing"));
  }

  @Test
  void another_form_than_json_is_refused() {
    Owner.asks()
        .contentType("text/plain")
        .header("Idempotency-Key", UUID.randomUUID().toString())
        .body("B-01")
        .post("/api/barrels")
        .then()
        .statusCode(415);
  }

  private static ValidatableResponse refused(String body, int status, String code) {
    return posts("/api/barrels", body)
        .statusCode(status)
        .contentType("application/problem+json")
        .body("code", equalTo(code))
        .body("status", equalTo(status))
        .body("detail", not(equalTo("")));
  }
}
