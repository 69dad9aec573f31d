package org.barreltally.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class SignInTest {

  static final String COOKIE = "barreltally-session";

  static RequestSpecification form(String name, String password) {
    return given()
        .redirects()
        .follow(false)
        .formParam("username", name)
        .formParam("password", password);
  }

  static String session() {
    return form("owner", Ask.OWNER_PASSWORD).post("/sign-in").cookie(COOKIE);
  }

  @Test
  void the_right_password_opens_the_start_page() {
    Response signedIn = form("owner", Ask.OWNER_PASSWORD).post("/sign-in");
    signedIn
        .then()
        .statusCode(303)
        .header("Location", matchesPattern("(http://[^/]+)?/"))
        .header("Set-Cookie", containsString("HttpOnly"))
        .header("Set-Cookie", matchesPattern("(?i).*samesite=lax.*"))
        .header("Set-Cookie", matchesPattern("(?i).*path=/(;.*)?"))
        .header("Set-Cookie", not(matchesPattern("(?i).*secure.*")));
    given()
        .cookie(COOKIE, signedIn.cookie(COOKIE))
        .get("/")
        .then()
        .statusCode(200)
        .body("**.find { it.name() == 'h1' }", startsWith("Today, "))
        .body("**.findAll { it.name() == 'nav' }.size()", equalTo(1));
  }

  @Test
  void the_name_may_be_typed_with_capitals_and_blanks() {
    form(" Owner ", Ask.OWNER_PASSWORD).post("/sign-in").then().statusCode(303);
  }

  @Test
  void a_wrong_password_shows_the_form_again_with_the_name_kept() {
    form("ow<ner", "wrong")
        .formParam("to", "/barrels?a=1")
        .post("/sign-in")
        .then()
        .statusCode(401)
        .contentType("text/html")
        .body("html.head.title", containsString("Not signed in"))
        .body("**.find { it.@id == 'username' }.@value", equalTo("ow<ner"))
        .body("**.find { it.@id == 'password-message' }", containsString("do not fit"))
        .body("**.find { it.@name == 'to' }.@value", equalTo("/barrels?a=1"))
        .body(not(containsString("value=\"wrong\"")));
  }

  @ParameterizedTest
  @CsvSource({"'',x", "owner,''", "'',''"})
  void an_empty_field_is_asked_for(String name, String password) {
    form(name, password).post("/sign-in").then().statusCode(400).body(containsString("both"));
  }

  @Test
  void a_form_without_fields_is_asked_for_them() {
    given().post("/sign-in").then().statusCode(400).body(containsString("both"));
  }

  @Test
  void names_and_passwords_that_cannot_be_do_no_harm() {
    form("a\u0000b", "x\u0000y").post("/sign-in").then().statusCode(401);
    form("o".repeat(1_500), "x").post("/sign-in").then().statusCode(401);
    form("owner", "x".repeat(1_500)).post("/sign-in").then().statusCode(401);
    form("o".repeat(5_000), "x").post("/sign-in").then().statusCode(413);
  }

  @Test
  void a_page_sends_who_is_not_signed_in_to_the_form_and_back() {
    given()
        .redirects()
        .follow(false)
        .get("/barrels?state=full&x=1")
        .then()
        .statusCode(303)
        .header("Location", equalTo("/sign-in?to=%2Fbarrels%3Fstate%3Dfull%26x%3D1"));
    given()
        .urlEncodingEnabled(false)
        .get("/sign-in?to=%2Fbarrels%3Fstate%3Dfull%26x%3D1")
        .then()
        .body("**.find { it.@name == 'to' }.@value", equalTo("/barrels?state=full&x=1"));
    form("owner", Ask.OWNER_PASSWORD)
        .formParam("to", "/barrels?state=full&x=1")
        .post("/sign-in")
        .then()
        .header("Location", matchesPattern("(http://[^/]+)?/barrels\\?state=full&x=1"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "//elsewhere.example/",
        "/\\elsewhere.example/",
        "https://elsewhere.example/",
        "javascript:alert(1)",
        "/a\r\nX: y",
        "/sign-out",
        "/{x}",
        "/%zz"
      })
  void signing_in_never_leads_elsewhere(String to) {
    String location =
        form("owner", Ask.OWNER_PASSWORD).formParam("to", to).post("/sign-in").header("Location");
    assertEquals("/", location.replaceFirst("^http://[^/]+", ""));
  }

  @Test
  void signing_out_ends_the_session() {
    String session = session();
    given()
        .redirects()
        .follow(false)
        .cookie(COOKIE, session)
        .post("/sign-out")
        .then()
        .statusCode(303)
        .header("Location", matchesPattern("(http://[^/]+)?/sign-in"));
    given().redirects().follow(false).cookie(COOKIE, session).get("/").then().statusCode(303);
  }

  @Test
  void signing_in_anew_ends_the_session_before() {
    String before = session();
    form("owner", Ask.OWNER_PASSWORD).cookie(COOKIE, before).post("/sign-in");
    given().redirects().follow(false).cookie(COOKIE, before).get("/").then().statusCode(303);
  }

  @Test
  void an_unknown_session_still_sees_the_form() {
    given().cookie(COOKIE, "made-up").get("/sign-in").then().statusCode(200);
  }

  @Test
  void pages_and_files_carry_the_headers_that_bind_browsers() {
    for (String path : new String[] {"/sign-in", "/api/me", "/nowhere"}) {
      given()
          .redirects()
          .follow(false)
          .get(path)
          .then()
          .header("Content-Security-Policy", containsString("frame-ancestors 'none'"))
          .header("Content-Security-Policy", not(containsString("unsafe-inline")))
          .header("X-Content-Type-Options", equalTo("nosniff"))
          .header("Referrer-Policy", equalTo("same-origin"))
          .header("Cache-Control", equalTo("no-store"));
    }
  }

  @Test
  void the_style_is_there_for_the_form() {
    given()
        .get("/assets/barreltally.css")
        .then()
        .statusCode(200)
        .contentType("text/css")
        .header("Cache-Control", containsString("max-age"))
        .body(notNullValue());
  }
}
