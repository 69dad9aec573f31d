package org.barreltally.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
class BadJsonTest {

  static Stream<Arguments> bad() {
    return Stream.of(
        field("{\"season\": \"2026\"}", "wrong-type", "season", "whole number"),
        field("{\"season\": 5.0}", "wrong-type", "season", "whole number"),
        field("{\"season\": true}", "wrong-type", "season", "whole number"),
        field("{\"season\": \"\"}", "wrong-type", "season", "whole number"),
        field("{\"season\": 99999999999}", "out-of-range", "season", "smaller"),
        field("{\"counted\": {\"count\": null}}", "wrong-type", "counted.count", "whole number"),
        field("{\"counted\": {}}", "wrong-type", "counted.count", "whole number"),
        field("{\"tag\": 5}", "wrong-type", "tag", "text in quotes"),
        field("{\"tag\": 5.5}", "wrong-type", "tag", "text in quotes"),
        field("{\"tag\": false}", "wrong-type", "tag", "text in quotes"),
        field("{\"tag\": {}}", "wrong-type", "tag", "text in quotes"),
        field("{\"tag\": \"a\\u0000b\"}", "invalid-field", "tag", "control"),
        field("{\"tag\": \"\\ud800\"}", "invalid-field", "tag", "control"),
        field("{\"all\": \"true\"}", "wrong-type", "all", "true or false"),
        field("{\"all\": 1}", "wrong-type", "all", "true or false"),
        field("{\"brix\": \"66.9\"}", "wrong-type", "brix", "number"),
        field("{\"brix\": true}", "wrong-type", "brix", "number"),
        field("{\"brix\": 1e999}", "invalid-field", "brix", "fewer digits"),
        field("{\"filledOn\": \"14.3.2026\"}", "invalid-field", "filledOn", "2026-03-14"),
        field("{\"filledOn\": \"2026-02-30\"}", "invalid-field", "filledOn", "2026-03-14"),
        field("{\"filledOn\": \"2026-03-14T00:00:00Z\"}", "invalid-field", "filledOn", "date"),
        field("{\"filledOn\": [2026, 3, 14]}", "wrong-type", "filledOn", "date"),
        field("{\"filledOn\": 20526}", "wrong-type", "filledOn", "date"),
        field("{\"at\": \"2026-03-14\"}", "invalid-field", "at", "instant"),
        field("{\"at\": \"2026-03-14T21:05Z\"}", "invalid-field", "at", "instant"),
        field("{\"at\": 1773522300}", "wrong-type", "at", "instant"),
        field("{\"id\": \"7\"}", "invalid-field", "id", "UUID"),
        field("{\"taste\": \"sweet\"}", "invalid-field", "taste", "buddy"),
        field("{\"taste\": \"CLEAN\"}", "invalid-field", "taste", "clean"),
        field("{\"taste\": 0}", "wrong-type", "taste", "clean"),
        field("{\"colour\": \"red\"}", "unknown-field", "colour", "season"),
        field("{\"weighing\": {\"net\": 1}}", "unknown-field", "weighing.net", "gross"),
        field("{\"weighing\": []}", "wrong-type", "weighing", "object"),
        field("{\"weighing\": {\"gross\": 486.5}}", "wrong-type", "weighing.gross", "object"),
        gross("{\"value\": 486.5}", "invalid-field", ".unit", "lb"),
        gross("{\"value\": 486.5, \"unit\": \"stone\"}", "unknown-unit", ".unit", "lb"),
        gross("{\"value\": 486.5, \"unit\": 1}", "wrong-type", ".unit", "text"),
        gross("{\"unit\": \"lb\"}", "invalid-field", ".value", "number"),
        gross("{\"value\": \"486.5\", \"unit\": \"lb\"}", "wrong-type", ".value", "number"),
        gross("{\"value\": 1234567890.123, \"unit\": \"lb\"}", "too-many-digits", ".value", "12"),
        gross("{\"value\": 1, \"unit\": \"lb\", \"at\": 1}", "unknown-field", ".at", "unit"),
        field("{\"draws\": {}}", "wrong-type", "draws", "list"),
        field("{\"draws\": [{\"from\": 1}]}", "wrong-type", "draws[0].from", "text"),
        field("{\"draws\": [{\"from\": \"a\"}]}", "invalid-field", "draws[0].weight", "how much"),
        field(
            "{\"draws\": [{\"weight\": {\"value\": 1, \"unit\": \"lb\"}}, {\"weight\": {}}]}",
            "invalid-field",
            "draws[1].weight.unit",
            "lb"),
        field("{\"tag\": \"" + "x".repeat(10_001) + "\"}", "too-large", "tag", "10,000"),
        field("{\"season\": " + "1".repeat(900) + "}", "out-of-range", "season", "smaller"),
        field("{\"brix\": " + "1".repeat(41) + "}", "invalid-field", "brix", "fewer digits"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad")
  void a_bad_field_is_named_with_the_mend(String body, String code, String field, String mend) {
    refused(body)
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field))
        .body("errors[0].message", containsString(mend));
  }

  static Stream<Arguments> broken() {
    return Stream.of(
        Arguments.of("{\"tag\": ", "broken-json", "line 1, column"),
        Arguments.of("{\"tag\" 1}", "broken-json", "line 1, column"),
        Arguments.of("{'tag': 1}", "broken-json", "line 1, column"),
        Arguments.of("{} {}", "broken-json", "after the end"),
        Arguments.of("{\"tag\": \"a\", \"tag\": \"b\"}", "duplicate-field", "twice"),
        Arguments.of("", "body-missing", "{}"),
        Arguments.of("  \n", "body-missing", "{}"),
        Arguments.of("null", "body-missing", "{}"),
        Arguments.of("[]", "wrong-type", "object"),
        Arguments.of("7", "wrong-type", "object"),
        Arguments.of("\"text\"", "wrong-type", "object"),
        Arguments.of("{\"a\":".repeat(30) + "1" + "}".repeat(30), "too-large", "20 levels"),
        Arguments.of("{\"brix\": " + "1".repeat(1_001) + "}", "too-large", "1,000 digits"),
        Arguments.of("{\"draws\":" + "[".repeat(30) + "]".repeat(30) + "}", "wrong-type", ""));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void a_bad_body_is_refused_with_the_mend(String body, String code, String detail) {
    refused(body).body("code", equalTo(code)).body("detail", containsString(detail));
  }

  @Test
  void text_that_is_not_utf_8_is_refused() {
    byte[] body = {'{', '"', 't', 'a', 'g', '"', ':', '"', (byte) 0xff, (byte) 0xfe, '"', '}'};
    Ask.asOwner()
        .contentType("application/json")
        .body(body)
        .post("/api/tried")
        .then()
        .statusCode(400)
        .body("code", equalTo("broken-json"));
  }

  @Test
  void a_line_of_an_array_is_named_by_its_number() {
    Ask.json("[{\"weight\": {\"value\": 1, \"unit\": \"lb\"}}, {\"weight\": 2}]")
        .post("/api/tried/lines")
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo("[1].weight"));
  }

  @Test
  void an_empty_list_where_one_is_needed_is_named() {
    Ask.json("{\"draws\": []}")
        .post("/api/tried/valid")
        .then()
        .statusCode(400)
        .body("code", equalTo("invalid-field"))
        .body("errors[0].field", equalTo("draws"));
  }

  @Test
  void what_is_right_comes_back_plainly_and_without_nulls() {
    Ask.json(
            """
            {"tag": "B-01", "counted": {"count": 2}, "filledOn": "2026-03-14", "at": "2026-03-14T21:05:00-04:00",
             "brix": 1e2, "taste": "clean",
             "weighing": {"gross": {"value": 486.50, "unit": "lb"}}}""")
        .post("/api/tried")
        .then()
        .statusCode(200)
        .body(
            equalTo(
                "{\"tag\":\"B-01\",\"counted\":{\"count\":2},\"filledOn\":\"2026-03-14\","
                    + "\"at\":\"2026-03-15T01:05:00Z\",\"brix\":100,\"taste\":\"clean\","
                    + "\"weighing\":{\"gross\":{\"value\":486.50,\"unit\":\"lb\"}}}"));
  }

  private static ValidatableResponse refused(String body) {
    return Ask.json(body)
        .post("/api/tried")
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("status", equalTo(400))
        .body("type", containsString("urn:barreltally:problem:"))
        .body("title", not(nullValue()))
        .body("detail", not(containsString("org.barreltally")))
        .body("detail", not(containsString("jackson")));
  }

  private static Arguments field(String body, String code, String field, String mend) {
    return Arguments.of(body, code, field, mend);
  }

  private static Arguments gross(String gross, String code, String field, String mend) {
    return field(
        "{\"weighing\": {\"gross\": " + gross + "}}", code, "weighing.gross" + field, mend);
  }
}
