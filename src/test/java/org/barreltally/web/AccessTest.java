package org.barreltally.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.UUID;
import org.barreltally.people.PersonFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class AccessTest {

  @Inject PersonFixture people;

  @ParameterizedTest
  @ValueSource(
      strings = {"/api/me", "/api/tokens", "/api/nowhere", "/openapi", "/q/metrics", "/q/info"})
  void machines_are_asked_who_they_are(String path) {
    unauthorized(given().get(path).then());
    given()
        .get(path)
        .then()
        .header("WWW-Authenticate", containsString("Basic"))
        .header("WWW-Authenticate", containsString("Bearer"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/barrels", "/api.html", "/apiary"})
  void browsers_are_sent_to_sign_in(String path) {
    given()
        .redirects()
        .follow(false)
        .get(path)
        .then()
        .statusCode(303)
        .header("Location", containsString("/sign-in"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/q/health", "/q/health/ready", "/sign-in", "/assets/mark.svg"})
  void what_needs_no_sign_in_is_open(String path) {
    given().get(path).then().statusCode(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/assets/../api/me", "/assets/%2e%2e/api/me", "//api/me", "/sign-in/../api/me"})
  void no_spelling_of_an_address_gets_around_signing_in(String path) {
    Response response = given().urlEncodingEnabled(false).redirects().follow(false).get(path);
    response.then().body(not(containsString("\"role\"")));
    assertEquals(false, response.statusCode() == 200, path + " " + response.statusCode());
  }

  @ParameterizedTest
  @CsvSource({
    "owner,wrong-password",
    "nobody,only for the tests",
    "'',only for the tests",
    "owner,''",
    "o'wner,x"
  })
  void a_wrong_name_or_password_is_refused(String name, String password) {
    unauthorized(given().auth().preemptive().basic(name, password).get("/api/me").then());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Basic",
        "Basic ",
        "Basic %%%",
        "Basic bm9jb2xvbg==",
        "Bearer ",
        "Bearer btl_x",
        "Digest x",
        "x"
      })
  void a_header_that_proves_nothing_is_refused(String header) {
    unauthorized(given().header("Authorization", header).get("/api/me").then());
  }

  @Test
  void the_right_password_says_who_is_there() {
    Ask.asOwner()
        .get("/api/me")
        .then()
        .statusCode(200)
        .body(equalTo("{\"name\":\"owner\",\"role\":\"owner\"}"));
  }

  /** Pages link to papers and lists; what changes something needs what no other site can send. */
  @Test
  void a_session_reads_at_api_and_changes_nothing_there() {
    String session = SignInTest.session();
    given().cookie(SignInTest.COOKIE, session).get("/api/me").then().statusCode(200);
    unauthorized(
        given()
            .cookie(SignInTest.COOKIE, session)
            .contentType("application/json")
            .body("{\"name\": \"from a page\"}")
            .post("/api/tokens")
            .then());
    unauthorized(given().cookie(SignInTest.COOKIE, session).delete("/api/tokens/x").then());
  }

  @Test
  void a_token_stands_for_its_person_until_it_is_revoked() {
    Response made = Ask.json("{\"name\": \"scale in the canning room\"}").post("/api/tokens");
    made.then()
        .statusCode(201)
        .header("Location", containsString("/api/tokens/" + made.path("id")))
        .body("token", matchesPattern("btl_[A-Za-z0-9_-]{43}"));
    String secret = made.path("token");
    bearer(secret).get("/api/me").then().statusCode(200).body("name", equalTo("owner"));
    bearer(secret)
        .get("/api/tokens")
        .then()
        .body("items.id", hasItem((String) made.path("id")))
        .body(not(containsString(secret)));
    bearer(secret).delete("/api/tokens/" + made.path("id")).then().statusCode(204);
    unauthorized(bearer(secret).get("/api/me").then());
    Ask.asOwner()
        .delete("/api/tokens/" + made.path("id"))
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-token"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{}|name",
        "{\"name\": \" \"}|name",
        "{\"name\": \"a\", \"expiresOn\": \"2020-01-01\"}|expiresOn"
      })
  void a_token_needs_a_name_and_a_future(String body, String field) {
    Ask.json(body)
        .post("/api/tokens")
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo(field));
  }

  @Test
  void a_new_password_takes_the_place_of_the_old_at_once() {
    String name = people.with("table", "the old password");
    RequestSpecification old = given().auth().preemptive().basic(name, "the old password");
    old.get("/api/me").then().statusCode(200);
    String session =
        SignInTest.form(name, "the old password").post("/sign-in").cookie(SignInTest.COOKIE);
    change(name, "the old password", "short").statusCode(400);
    change(name, "the old passwort", "the new password")
        .statusCode(401); // the header already carries the wrong one
    given()
        .auth()
        .preemptive()
        .basic(name, "the old password")
        .contentType("application/json")
        .body("{\"current\": \"another\", \"next\": \"the new password\"}")
        .post("/api/me/password")
        .then()
        .statusCode(422)
        .body("code", equalTo("wrong-password"))
        .body("errors[0].field", equalTo("current"));
    change(name, "the old password", "the new password").statusCode(204);
    unauthorized(given().auth().preemptive().basic(name, "the old password").get("/api/me").then());
    given()
        .auth()
        .preemptive()
        .basic(name, "the new password")
        .get("/api/me")
        .then()
        .statusCode(200);
    given()
        .redirects()
        .follow(false)
        .cookie(SignInTest.COOKIE, session)
        .get("/")
        .then()
        .statusCode(303);
  }

  @Test
  void many_wrong_passwords_for_a_name_make_it_wait_even_with_the_right_one() {
    String name = people.with("packing", "right all along");
    for (int i = 0; i < 10; i++) {
      given().auth().preemptive().basic(name, "guess " + i).get("/api/me").then().statusCode(401);
    }
    given()
        .auth()
        .preemptive()
        .basic(name, "right all along")
        .get("/api/me")
        .then()
        .statusCode(429)
        .contentType("application/problem+json")
        .body("code", equalTo("too-many-attempts"))
        .header("Retry-After", matchesPattern("[1-9][0-9]*"));
    SignInTest.form(name, "right all along")
        .post("/sign-in")
        .then()
        .statusCode(429)
        .contentType("text/html")
        .header("Retry-After", matchesPattern("[1-9][0-9]*"));
    Ask.asOwner().get("/api/me").then().statusCode(200);
  }

  @Test
  void a_bookkeeper_reads_and_changes_nothing_but_the_password() {
    String name = people.with("bookkeeper", "sums and more sums");
    as(name, "sums and more sums").get("/api/tokens").then().statusCode(200);
    as(name, "sums and more sums")
        .contentType("application/json")
        .body("{\"name\": \"x\"}")
        .post("/api/tokens")
        .then()
        .statusCode(403)
        .contentType("application/problem+json")
        .body("code", equalTo("not-allowed"));
    as(name, "sums and more sums")
        .delete("/api/tokens/" + UUID.randomUUID())
        .then()
        .statusCode(403);
    change(name, "sums and more sums", "other sums altogether").statusCode(204);
  }

  @ParameterizedTest
  @CsvSource({
    "Sec-Fetch-Site,cross-site",
    "Sec-Fetch-Site,same-site",
    "Origin,https://elsewhere.example",
    "Origin,null",
    "Origin,http://localhost:1",
    "Origin,%%"
  })
  void what_another_site_makes_a_browser_send_is_refused(String header, String value) {
    SignInTest.form("owner", Ask.OWNER_PASSWORD)
        .header(header, value)
        .post("/sign-in")
        .then()
        .statusCode(403)
        .body("code", equalTo("cross-site"));
    Ask.json("{\"name\": \"x\"}").header(header, value).post("/api/tokens").then().statusCode(403);
  }

  @Test
  void what_a_page_here_sends_is_taken() {
    String host = "localhost:" + io.restassured.RestAssured.port;
    SignInTest.form("owner", Ask.OWNER_PASSWORD)
        .header("Origin", "http://" + host)
        .post("/sign-in")
        .then()
        .statusCode(303);
    SignInTest.form("owner", Ask.OWNER_PASSWORD)
        .header("Sec-Fetch-Site", "same-origin")
        .post("/sign-in")
        .then()
        .statusCode(303);
  }

  private static ValidatableResponse change(String name, String current, String next) {
    return as(name, current)
        .contentType("application/json")
        .body("{\"current\": \"" + current + "\", \"next\": \"" + next + "\"}")
        .post("/api/me/password")
        .then();
  }

  private static RequestSpecification as(String name, String password) {
    return given().auth().preemptive().basic(name, password);
  }

  private static RequestSpecification bearer(String secret) {
    return given().header("Authorization", "Bearer " + secret);
  }

  private static void unauthorized(ValidatableResponse response) {
    response
        .statusCode(401)
        .contentType("application/problem+json")
        .body("code", equalTo("not-signed-in"));
  }
}
