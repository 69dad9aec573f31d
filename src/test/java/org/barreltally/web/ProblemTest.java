package org.barreltally.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class ProblemTest {

  @ParameterizedTest
  @CsvSource({
    "INVALID,400",
    "RULE,422",
    "CONFLICT,409",
    "NOT_FOUND,404",
    "STALE,412",
    "FORBIDDEN,403"
  })
  void each_kind_of_refusal_has_its_status(String kind, int status) {
    problem(Ask.asOwner().get("/api/tried/refused/" + kind).then(), status, "too-light")
        .body("title", equalTo("Too light"))
        .body("detail", equalTo("Boil it further."))
        .body("errors[0].field", equalTo("brix"));
  }

  @ParameterizedTest
  @CsvSource({"/api/nowhere", "/api", "/api/tried/by-id/7", "/api/tried/refused/odd", "/nowhere"})
  void an_address_that_leads_nowhere_is_not_found(String path) {
    boolean isPage = !path.startsWith("/api");
    problem(
        (isPage ? given().cookie(SignInTest.COOKIE, SignInTest.session()) : Ask.asOwner())
            .get(path)
            .then(),
        404,
        "not-found");
  }

  @Test
  void a_method_an_address_does_not_take_is_answered_with_those_it_takes() {
    problem(Ask.asOwner().delete("/api/me").then(), 405, "method-not-allowed")
        .header("Allow", containsString("GET"));
  }

  @Test
  void a_form_of_answer_that_is_not_given_is_refused() {
    problem(Ask.asOwner().accept("image/png").get("/api/me").then(), 406, "not-acceptable");
  }

  @Test
  void a_form_of_body_that_is_not_read_is_refused() {
    problem(
        Ask.asOwner().contentType("text/plain").body("tag").post("/api/tried").then(),
        415,
        "unsupported-media-type");
  }

  @Test
  void a_body_that_says_it_is_too_large_is_refused() {
    problem(Ask.json(" ".repeat(1_000_001)).post("/api/tried").then(), 413, "body-too-large");
  }

  @Test
  void a_body_that_grows_too_large_unsaid_is_refused() {
    byte[] body = ("[" + " ".repeat(1_200_000) + "]").getBytes(StandardCharsets.UTF_8);
    problem(
        Ask.asOwner()
            .contentType("application/json")
            .body(new ByteArrayInputStream(body))
            .post("/api/tried")
            .then(),
        413,
        "body-too-large");
  }

  @ParameterizedTest
  @CsvSource({"/api/tried/by-id/%00", "/api/tried/paged?after=a%00b"})
  void a_NUL_in_an_address_is_refused(String path) {
    problem(Ask.asOwner().urlEncodingEnabled(false).get(path).then(), 400, "bad-character");
  }

  @Test
  void a_malformed_escape_in_an_address_is_refused() {
    int status = Ask.asOwner().urlEncodingEnabled(false).get("/api/tried/%ff").statusCode();
    assertEquals(404, status);
  }

  @ParameterizedTest
  @CsvSource({
    "23505,409,clash",
    "23514,409,clash",
    "40001,503,try-again",
    "40P01,503,try-again",
    "22021,400,bad-character",
    "42P01,500,defect"
  })
  void what_postgresql_refuses_is_said_in_plain_words(String state, int status, String code) {
    problem(Ask.asOwner().get("/api/tried/sql/" + state).then(), status, code)
        .body("detail", not(containsString("inner words")));
  }

  @Test
  void who_may_try_again_is_told_when() {
    Ask.asOwner().get("/api/tried/sql/40P01").then().header("Retry-After", equalTo("2"));
  }

  @Test
  void a_defect_shows_an_incident_and_nothing_of_the_inside() {
    String detail =
        problem(Ask.asOwner().get("/api/tried/defect").then(), 500, "defect")
            .body(not(containsString("recipe")))
            .body(not(containsString("Exception")))
            .extract()
            .path("detail");
    String incident = detail.replaceAll(".*incident ([-0-9a-f]+)\\.$", "$1");
    assertEquals(incident, UUID.fromString(incident).toString());
  }

  @Test
  void a_browser_that_opens_a_missing_page_gets_a_page() {
    given()
        .cookie(SignInTest.COOKIE, SignInTest.session())
        .accept("text/html")
        .get("/nowhere")
        .then()
        .statusCode(404)
        .contentType("text/html")
        .body("html.head.title", equalTo("Nothing here – Barreltally"))
        .body("**.find { it.name() == 'h1' }", equalTo("Nothing here"))
        .body(containsString("Sign out"));
  }

  @Test
  void a_browser_under_api_gets_a_document_all_the_same() {
    problem(Ask.asOwner().accept("text/html").get("/api/nowhere").then(), 404, "not-found");
  }

  @Test
  void the_description_names_the_problem_for_every_operation() {
    Ask.asOwner()
        .accept("application/json")
        .get("/openapi?format=json")
        .then()
        .statusCode(200)
        .body("info.title", equalTo("Barreltally"))
        .body("components.securitySchemes.basic.scheme", equalTo("basic"))
        .body("components.securitySchemes.token.scheme", equalTo("bearer"))
        .body("components.schemas.Problem.required", hasItem("code"))
        .body("paths.'/api/me'.get.summary", notNullValue())
        .body(
            "paths.'/api/me'.get.responses.default.'$ref'",
            equalTo("#/components/responses/Problem"))
        .body("components.schemas.Unit.enum", hasItem("degF"))
        .body("components.schemas.Taste.enum", hasItem("other-off"))
        .body("paths.'/sign-in'", equalTo(null));
  }

  private static ValidatableResponse problem(
      ValidatableResponse response, int status, String code) {
    return response
        .statusCode(status)
        .contentType("application/problem+json")
        .body("status", equalTo(status))
        .body("code", equalTo(code))
        .body("type", equalTo("urn:barreltally:problem:" + code));
  }
}
