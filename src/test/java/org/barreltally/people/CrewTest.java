package org.barreltally.people;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.BookRows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The owner sees to who signs in. */
@QuarkusTest
class CrewTest {

  @Inject BookRows rows;

  private static String newName() {
    return "c" + UUID.randomUUID().toString().substring(0, 12);
  }

  private static JsonPath join(String name, String role) {
    return posts(
            "/api/people",
            "{'name': '%s', 'displayName': 'Marla Quince', 'role': '%s'}".formatted(name, role))
        .statusCode(201)
        .body("password", matchesPattern("([0-9a-z]{5}-){3}[0-9a-z]{5}"))
        .extract()
        .jsonPath();
  }

  private static int signsIn(String name, String password) {
    return given().auth().preemptive().basic(name, password).get("/api/me").statusCode();
  }

  @Test
  void somebody_joins_with_a_password_that_is_shown_once() {
    String name = newName();
    String password = join(name, "table").getString("password");
    given()
        .auth()
        .preemptive()
        .basic(name, password)
        .get("/api/me")
        .then()
        .statusCode(200)
        .body("role", equalTo("table"));
    reads("/api/people/" + name).body("password", nullValue()).body("role", equalTo("table"));
    reads("/api/people").body("items.name", hasItem(name));
  }

  @Test
  void a_lost_password_is_replaced_and_the_old_one_stops_at_once() {
    String name = newName();
    String old = join(name, "packing").getString("password");
    assertEquals(200, signsIn(name, old));
    String fresh =
        posts("/api/people/" + name + "/password", "{}").statusCode(200).extract().path("password");
    assertEquals(401, signsIn(name, old));
    assertEquals(200, signsIn(name, fresh));
  }

  @Test
  void whoever_leaves_is_signed_out_everywhere_and_may_come_back() {
    String name = newName();
    String password = join(name, "canning").getString("password");
    String token =
        given()
            .auth()
            .preemptive()
            .basic(name, password)
            .contentType("application/json")
            .body("{\"name\": \"scale\"}")
            .post("/api/tokens")
            .then()
            .statusCode(201)
            .extract()
            .path("token");
    String session =
        given()
            .redirects()
            .follow(false)
            .formParam("username", name)
            .formParam("password", password)
            .post("/sign-in")
            .cookie("barreltally-session");
    given().header("Authorization", "Bearer " + token).get("/api/me").then().statusCode(200);
    posts("/api/people/" + name + "/leave", "{}").statusCode(200).body("leftAt", notNullValue());
    assertEquals(401, signsIn(name, password));
    given().header("Authorization", "Bearer " + token).get("/api/me").then().statusCode(401);
    given()
        .redirects()
        .follow(false)
        .cookie("barreltally-session", session)
        .get("/barrels")
        .then()
        .statusCode(303);
    String fresh =
        posts("/api/people/" + name + "/return", "{}")
            .statusCode(200)
            .body("leftAt", nullValue())
            .extract()
            .path("password");
    assertEquals(200, signsIn(name, fresh));
    given().header("Authorization", "Bearer " + token).get("/api/me").then().statusCode(401);
  }

  @Test
  void another_role_holds_at_once() {
    String name = newName();
    String password = join(name, "bookkeeper").getString("password");
    String barrel = "{\"tag\": \"\"}";
    assertEquals(403, tries(name, password, barrel));
    posts("/api/people/" + name + "/role", "{'role': 'canning'}")
        .statusCode(200)
        .body("role", equalTo("canning"));
    assertEquals(400, tries(name, password, barrel));
  }

  private static int tries(String name, String password, String json) {
    return given()
        .auth()
        .preemptive()
        .basic(name, password)
        .contentType("application/json")
        .header("Idempotency-Key", UUID.randomUUID().toString())
        .body(json)
        .post("/api/barrels")
        .statusCode();
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      textBlock =
          """
          /api/people, "{'name': 'Marla Q', 'role': 'table'}", 400, invalid-field, name
          /api/people, "{'role': 'table'}", 400, invalid-field, name
          /api/people, "{'name': 'somebody-new'}", 400, invalid-field, role
          /api/people, "{'name': 'owner', 'role': 'table'}", 409, name-taken, name
          /api/people/owner/role, "{'role': 'table'}", 409, owner-needed, role
          /api/people/owner/role, "{}", 400, invalid-field, role
          /api/people/nobody-here/role, "{'role': 'table'}", 404, unknown-person,
          /api/people/owner/leave, "{}", 409, owner-needed,
          """)
  void what_cannot_be_is_refused_and_changes_nothing(
      String path, String json, int status, String code, String field) {
    Map<String, String> before = rows.fingerprint();
    posts(path, json)
        .statusCode(status)
        .body("code", equalTo(code))
        .body("errors[0].field", field == null ? nullValue() : equalTo(field));
    assertEquals(before, rows.fingerprint());
  }

  @ParameterizedTest
  @CsvSource({"canning", "table", "packing", "bookkeeper"})
  void nobody_else_sees_to_people(String role) {
    String name = newName();
    String password = join(name, role).getString("password");
    given().auth().preemptive().basic(name, password).get("/api/people").then().statusCode(403);
  }
}
