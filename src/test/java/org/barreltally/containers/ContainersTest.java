package org.barreltally.containers;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
class ContainersTest {

  private static final String LEAF =
      """
      {"code": "CODE", "name": "Glass leaf", "netContents": {"value": 250, "unit": "mL"},
       "brimful": {"value": 265, "unit": "mL"}, "emptyWeight": {"value": 310, "unit": "g"},
       "material": "glass"}
      """;

  @Inject Containers containers;

  private final String code =
      "T" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);

  /** NIST Handbook 44, appendix C: the gallon is 231 cubic inches, 3785.411784 mL exactly. */
  @ParameterizedTest
  @CsvSource({
    "GAL, 3785.411784",
    "HGAL, 1892.705892",
    "QT, 946.352946",
    "PT, 473.176473",
    "HP, 236.5882365",
    "G1000, 1000",
    "G500, 500",
    "G250, 250",
    "G100, 100"
  })
  void a_fresh_book_knows_the_usual_sizes(String size, double contentsML) {
    assertEquals(contentsML, containers.at(size).netML(), 1e-9);
  }

  @Test
  void shaped_glass_is_added_with_contents_of_its_own() {
    add(LEAF)
        .statusCode(201)
        .header("Location", endsWith("/api/containers/" + code))
        .body("code", equalTo(code));
    get("/api/containers/" + code)
        .statusCode(200)
        .body("name", equalTo("Glass leaf"))
        .body("netContents.value", equalTo(250))
        .body("netContents.unit", equalTo("mL"))
        .body("brimful.value", equalTo(265))
        .body("emptyWeight.value", equalTo(310))
        .body("material", equalTo("glass"));
  }

  @Test
  void only_code_name_contents_and_material_are_needed() {
    add("""
            {"code": "CODE", "name": "Tin", "netContents": {"value": 16.5, "unit": "floz"},
             "material": "tin"}
            """)
        .statusCode(201)
        .body("netContents.value", equalTo(16.5f))
        .body("netContents.unit", equalTo("floz"))
        .body("brimful", nullValue())
        .body("emptyWeight", nullValue());
  }

  @Test
  void a_brim_in_another_unit_is_answered_in_the_unit_of_the_contents() {
    add("""
            {"code": "CODE", "name": "Tin", "netContents": {"value": 16, "unit": "floz"},
             "brimful": {"value": 0.5, "unit": "L"}, "emptyWeight": {"value": 2, "unit": "oz"},
             "material": "tin"}
            """)
        .statusCode(201)
        .body("brimful.value", equalTo(16.907f))
        .body("brimful.unit", equalTo("floz"))
        .body("emptyWeight.value", equalTo(56.699f))
        .body("emptyWeight.unit", equalTo("g"));
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        refused("\"CODE\"", "\"lower\"", 400, "invalid-field", "code"),
        refused("\"CODE\"", "\"TOO-LONG-A-CODE\"", 400, "invalid-field", "code"),
        refused("\"code\": \"CODE\", ", "", 400, "invalid-field", "code"),
        refused("\"CODE\"", "\"PT\"", 409, "container-exists", "code"),
        refused("Glass leaf", "", 400, "invalid-field", "name"),
        refused("Glass leaf", "x".repeat(101), 400, "invalid-field", "name"),
        refused("Glass leaf", "x".repeat(5000), 400, "invalid-field", "name"),
        refused(
            "250, \"unit\": \"mL\"",
            "250, \"unit\": \"g\"",
            400,
            "invalid-field",
            "netContents.unit"),
        refused(
            "250, \"unit\": \"mL\"",
            "250, \"unit\": \"jar\"",
            400,
            "unknown-unit",
            "netContents.unit"),
        refused("\"value\": 250", "\"value\": 0", 400, "invalid-field", "netContents"),
        refused("\"value\": 250", "\"value\": -250", 400, "invalid-field", "netContents"),
        refused("\"value\": 250", "\"value\": 1000001", 400, "invalid-field", "netContents"),
        refused("\"value\": 250", "\"value\": 1e999", 400, "invalid-field", "netContents.value"),
        refused(
            "\"value\": 250", "\"value\": 2.0000000001", 400, "invalid-field", "netContents.value"),
        refused("\"value\": 265", "\"value\": 249.9", 422, "brimful-under-contents", "brimful"),
        refused(
            "265, \"unit\": \"mL\"",
            "265, \"unit\": \"degF\"",
            400,
            "invalid-field",
            "brimful.unit"),
        refused("\"value\": 310", "\"value\": 0", 400, "invalid-field", "emptyWeight"),
        refused(
            "310, \"unit\": \"g\"",
            "310, \"unit\": \"mL\"",
            400,
            "invalid-field",
            "emptyWeight.unit"),
        refused("\"glass\"", "\"wood\"", 400, "invalid-field", "material"),
        refused(",\n \"material\": \"glass\"", "", 400, "invalid-field", "material"),
        refused("\"name\"", "\"colour\": 1, \"name\"", 400, "unknown-field", "colour"));
  }

  private static Arguments refused(String was, String is, int status, String code, String field) {
    return Arguments.of(was, is, status, code, field);
  }

  @ParameterizedTest(name = "{1}: {3}")
  @MethodSource("refused")
  void what_is_no_container_is_refused_by_name(
      String was, String is, int status, String refusal, String field) {
    add(LEAF.replace(was, is))
        .statusCode(status)
        .body("code", equalTo(refusal))
        .body("errors[0].field", equalTo(field));
    get("/api/containers/" + code).statusCode(404);
  }

  @Test
  void every_field_at_fault_is_named_at_once() {
    add("{}")
        .statusCode(400)
        .body("errors.field", equalTo(List.of("code", "name", "netContents", "material")));
  }

  @Test
  void a_second_one_of_the_same_code_is_refused() {
    add(LEAF).statusCode(201);
    add(LEAF.replace("250", "240"))
        .statusCode(409)
        .body("code", equalTo("container-exists"))
        .body("detail", containsString(code));
    get("/api/containers/" + code).body("netContents.value", equalTo(250));
  }

  @Test
  void the_list_comes_in_parts() {
    String next =
        get("/api/containers?limit=2")
            .statusCode(200)
            .body("items", hasSize(2))
            .extract()
            .path("next");
    get("/api/containers?limit=500&after=" + next)
        .statusCode(200)
        .body("items.code", hasItem("QT"))
        .body("next", nullValue());
  }

  @Test
  void an_unknown_one_is_not_found() {
    get("/api/containers/" + code).statusCode(404).body("code", equalTo("unknown-container"));
  }

  private ValidatableResponse add(String json) {
    return asOwner()
        .contentType("application/json")
        .body(json.replace("CODE", code))
        .post("/api/containers")
        .then();
  }

  private static ValidatableResponse get(String path) {
    return asOwner().get(path).then();
  }

  private static RequestSpecification asOwner() {
    return given().auth().preemptive().basic("owner", "only for the tests");
  }
}
