package org.barreltally.barrels;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.barrels.Asked.filled;
import static org.barreltally.barrels.Asked.halfBarrel;
import static org.barreltally.barrels.Asked.with;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.oneOf;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.barreltally.SoundBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a change of a barrel is refused for: each names rule and field, and leaves nothing behind.
 */
@QuarkusTest
class ChangeRefusalsTest {

  private static final String LONG = "x".repeat(5000);

  private static String tag;

  @Inject BookRows rows;

  @AfterAll
  static void the_book_is_sound() {
    SoundBook.check();
  }

  private static String tag() {
    if (tag == null) {
      tag = filled();
    }
    return tag;
  }

  /** Columns: what is done, the body, status, code, field named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          weighings  | {'on': '2024-05-01'}                                                    | 400 | invalid-field | weighing
          weighings  | {'on': '2024-05-01', 'weighing': {}}                                    | 400 | invalid-field | weighing.gross
          weighings  | {'weighing': {'gross': {'value': 260, 'unit': 'lb'}}}                   | 400 | invalid-field | on
          weighings  | {'on': '2999-01-01', 'weighing': {'gross': {'value': 260, 'unit': 'lb'}}} | 400 | in-the-future | on
          weighings  | {'on': '2024-03-19', 'weighing': {'gross': {'value': 260, 'unit': 'lb'}}} | 400 | invalid-field | on
          weighings  | {'on': '2024-05-01', 'weighing': {'gross': {'value': 40, 'unit': 'lb'}}}  | 422 | gross-under-tare | weighing.gross
          weighings  | {'on': '2024-05-01', 'weighing': {'gross': {'value': 40, 'unit': 'st'}}}  | 400 | unknown-unit  | weighing.gross.unit
          weighings  | {'on': '2024-05-01', 'weighing': {'gross': {'value': 40, 'unit': 'gal'}}} | 400 | invalid-field | weighing.gross.unit
          weighings  | {'on': '2024-05-01', 'weighing': {'gross': 260}}                          | 400 | wrong-type    | weighing.gross
          weighings  | {'on': '2024-05-01', 'weight': 260}                                       | 400 | unknown-field | weight
          regrade    | {'on': '2024-05-01', 'taste': 'clean'}                                    | 400 | invalid-field | transmittance
          regrade    | {'on': '2024-05-01', 'transmittance': 60}                                 | 400 | invalid-field | taste
          regrade    | {'on': '2024-05-01', 'transmittance': true, 'taste': 'clean'}             | 400 | wrong-type    | transmittance
          regrade    | {'on': '2024-05-01', 'transmittance': 1e999, 'taste': 'clean'}            | 400 | invalid-field | transmittance
          regrade    | {'on': '2024-05-01', 'transmittance': 100.1, 'taste': 'clean'}            | 400 | invalid-field | transmittance
          regrade    | {'on': '2024-05-01', 'transmittance': 60, 'taste': 'sweet'}               | 400 | invalid-field | taste
          regrade    | {'on': '2999-05-01', 'transmittance': 60, 'taste': 'clean'}               | 400 | in-the-future | on
          regrade    | {'transmittance': 60, 'taste': 'clean'}                                   | 400 | invalid-field | on
          regrade    | {'on': '2024-05-01', 'grade': 'golden'}                                   | 400 | unknown-field | grade
          hold       | {}                                                                        | 400 | invalid-field | reason
          hold       | {'reason': ' '}                                                           | 400 | invalid-field | reason
          hold       | {'reason': 5}                                                             | 400 | wrong-type    | reason
          release    | {'reason': ''}                                                            | 400 | invalid-field | reason
          write-offs | {'on': '2024-05-01', 'cause': 'discarded', 'reason': 'x'}                 | 400 | invalid-field | weight
          write-offs | {'on': '2024-05-01', 'all': true, 'weight': {'value': 1, 'unit': 'lb'}, 'cause': 'discarded', 'reason': 'x'} | 400 | invalid-field | weight
          write-offs | {'on': '2024-05-01', 'all': 'yes', 'cause': 'discarded', 'reason': 'x'}   | 400 | wrong-type    | all
          write-offs | {'on': '2024-05-01', 'all': true, 'cause': 'drunk', 'reason': 'x'}        | 400 | invalid-field | cause
          write-offs | {'on': '2024-05-01', 'all': true, 'reason': 'x'}                          | 400 | invalid-field | cause
          write-offs | {'on': '2024-05-01', 'all': true, 'cause': 'sampled'}                     | 400 | invalid-field | reason
          write-offs | {'on': '2024-05-01', 'weight': {'value': 0, 'unit': 'lb'}, 'cause': 'sampled', 'reason': 'x'}  | 400 | invalid-field | weight
          write-offs | {'on': '2024-05-01', 'weight': {'value': 1, 'unit': 'gal'}, 'cause': 'sampled', 'reason': 'x'} | 400 | invalid-field | weight.unit
          write-offs | {'on': '2024-05-01', 'weight': {'value': 9999, 'unit': 'lb'}, 'cause': 'sampled', 'reason': 'x'} | 409 | more-than-it-holds | weight
          write-offs | {'on': '2999-05-01', 'all': true, 'cause': 'sampled', 'reason': 'x'}      | 400 | in-the-future | on
          """)
  void a_field_that_cannot_be_right_is_named(
      String what, String body, int status, String code, String field) {
    refused("/api/barrels/" + tag() + "/" + what, body, status, code, field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {'on': '2024-05-01'}                                | 409 | barrel-not-empty | discard
          {'on': '2024-05-01', 'discard': {}}                 | 400 | invalid-field    | discard.reason
          {'on': '2024-05-01', 'discard': {'reason': ' '}}    | 400 | invalid-field    | discard.reason
          {'on': '2024-05-01', 'discard': true}               | 400 | wrong-type       | discard
          {'on': '2999-05-01', 'discard': {'reason': 'Old'}}  | 400 | in-the-future    | on
          {'discard': {'reason': 'Old'}}                      | 400 | invalid-field    | on
          """)
  void a_washing_that_cannot_be_right_is_refused(
      String body, int status, String code, String field) {
    refused("/api/vessels/" + tag() + "/washings", body, status, code, field);
  }

  /** Columns: path in a purchase, the JSON put there (none takes it away), status, code, field. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          supplier          |                | 400 | invalid-field    | supplier
          supplier          | 'Fennimore'    | 400 | wrong-type       | supplier
          supplier.name     |                | 400 | invalid-field    | supplier.name
          supplier.name     | ' '            | 400 | invalid-field    | supplier.name
          supplier.name     | 7              | 400 | wrong-type       | supplier.name
          supplier.phone    | '555'          | 400 | unknown-field    | supplier.phone
          on                |                | 400 | invalid-field    | on
          on                | '2999-01-01'   | 400 | in-the-future    | on
          filledOn          | '2024-03-20'   | 400 | unknown-field    | filledOn
          season            | 2999           | 400 | invalid-field    | season
          weighing.gross.value | 40          | 422 | gross-under-tare | weighing.gross
          density.reading.value | 36.2       | 422 | looks-like-baume | density.reading
          """)
  void a_purchase_that_cannot_be_right_is_refused(
      String path, String value, int status, String code, String field) {
    refused(
        "/api/purchases",
        with(PurchasesTest.purchase(newTag("X")), path, value),
        status,
        code,
        field);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/barrels/%s/hold|{'reason': '%s'}|reason",
        "/api/barrels/%s/release|{'reason': '%s'}|reason",
        "/api/barrels/%s/regrade|{'on': '2024-05-01', 'transmittance': 60, 'taste': 'clean', 'reason': '%s'}|reason",
        "/api/barrels/%s/write-offs|{'on': '2024-05-01', 'all': true, 'cause': 'sampled', 'reason': '%s'}|reason",
        "/api/vessels/%s/washings|{'on': '2024-05-01', 'discard': {'reason': '%s'}}|discard.reason"
      })
  void a_text_of_five_thousand_characters_is_refused(String row) {
    String[] columns = row.split("\\|");
    refused(
        columns[0].formatted(tag()), columns[1].formatted(LONG), 400, "invalid-field", columns[2]);
  }

  @Test
  void a_long_name_of_a_person_is_refused() {
    refused(
        "/api/purchases",
        with(PurchasesTest.purchase(newTag("X")), "supplier.name", '"' + LONG + '"'),
        400,
        "invalid-field",
        "supplier.name");
    refused(
        "/api/purchases",
        with(PurchasesTest.purchase(newTag("X")), "supplier.details", '"' + LONG + '"'),
        400,
        "invalid-field",
        "supplier.details");
    refused(
        "/api/barrels/" + tag() + "/top-ups",
        with(Asked.topUpTo(66.9), "reheat.by", '"' + LONG + '"'),
        400,
        "invalid-field",
        "reheat.by");
  }

  @Test
  void a_tag_or_lot_as_long_as_an_address_may_be_is_not_found_and_not_repeated() {
    String name = LONG.substring(0, 3900);
    for (String path : new String[] {"/api/barrels/", "/api/vessels/", "/api/lots/"}) {
      Owner.asks().get(path + name).then().statusCode(404).body(not(containsString(name)));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"weighings", "top-ups", "write-offs", "regrade", "hold", "release"})
  void what_is_no_record_is_refused(String what) {
    String path = "/api/barrels/" + tag() + "/" + what;
    Map<String, String> before = rows.fingerprint();
    posts(path, "").statusCode(400).body("code", equalTo("body-missing"));
    posts(path, "{'on': ").statusCode(400).body("code", equalTo("broken-json"));
    posts(path, "[]").statusCode(400).body("code", equalTo("wrong-type"));
    posts(path, "{}").statusCode(oneOf(400, 422));
    assertEquals(before, rows.fingerprint());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/barrels/%s/weighings",
        "/api/barrels/%s/top-ups",
        "/api/barrels/%s/write-offs",
        "/api/vessels/%s/washings",
        "/api/purchases"
      })
  void what_moves_stock_asks_for_a_request_id(String path) {
    Map<String, String> before = rows.fingerprint();
    String body =
        path.equals("/api/purchases")
            ? PurchasesTest.purchase(newTag("X"))
            : path.endsWith("top-ups")
                ? Asked.topUpTo(66.9)
                : path.endsWith("weighings")
                    ? "{'on': '2024-05-01', 'weighing': {'gross': {'value': 260, 'unit': 'lb'}}}"
                    : path.endsWith("write-offs")
                        ? "{'on': '2024-05-01', 'all': true, 'cause': 'sampled', 'reason': 'x'}"
                        : "{'on': '2024-05-01', 'discard': {'reason': 'Old'}}";
    Owner.asks()
        .contentType("application/json")
        .body(body.replace('\'', '"'))
        .post(path.formatted(tag()))
        .then()
        .statusCode(400)
        .body("code", equalTo("id-missing"));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void over_the_brim_a_weighing_is_refused() {
    String small = newTag("B");
    Asked.fill(with(halfBarrel(small), "capacity", "{'value': 21, 'unit': 'gal'}"));
    refused(
        "/api/barrels/" + small + "/weighings",
        "{'on': '2024-05-01', 'weighing': {'gross': {'value': 300, 'unit': 'lb'}}}",
        422,
        "over-capacity",
        "weighing.gross");
  }

  private void refused(String path, String body, int status, String code, String field) {
    Map<String, String> before = rows.fingerprint();
    posts(path, body)
        .statusCode(status)
        .contentType("application/problem+json")
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field));
    assertEquals(before, rows.fingerprint());
  }
}
