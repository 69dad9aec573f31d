package org.barreltally.people;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.internal.CodeRows;
import org.barreltally.people.internal.PhoneFixture;
import org.barreltally.people.internal.Users;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes at sign-in, from setting up the phone to losing it. */
@QuarkusTest
class CodesTest {

  private static final String PASSWORD = "what somebody chose";

  @Inject PersonFixture people;
  @Inject Codes codes;
  @Inject Passwords passwords;
  @Inject PageSessions sessions;
  @Inject CodeRows rows;
  @Inject Users users;
  @Inject Clock clock;

  private String name;

  @BeforeEach
  void somebody() {
    name = people.with("packing", PASSWORD);
  }

  private UUID id() {
    return users.named(name).orElseThrow().person().id();
  }

  /** Sets up codes at this moment, past pages. */
  private PhoneFixture phone() {
    PhoneFixture phone = new PhoneFixture(codes.begin(name, PASSWORD).seed());
    confirms(phone);
    return phone;
  }

  /** Confirms the code before the present one, so that this one is still good. */
  private List<String> confirms(PhoneFixture phone) {
    try {
      return codes.confirm(id(), phone.shows(clock.instant().minusSeconds(30)));
    } catch (WrongCode halfMinuteEndedMeanwhile) {
      return codes.confirm(id(), phone.shows(clock.instant().minusSeconds(30)));
    }
  }

  private Response signsIn(String code) {
    return signsIn(PASSWORD, code);
  }

  private Response signsIn(String password, String code) {
    return given()
        .redirects()
        .follow(false)
        .formParam("username", name)
        .formParam("password", password)
        .formParam("code", code)
        .post("/sign-in");
  }

  private ValidatableResponse sends(String path, String body) {
    return given()
        .auth()
        .preemptive()
        .basic(name, PASSWORD)
        .contentType("application/json")
        .body(body.replace('\'', '"'))
        .post(path)
        .then();
  }

  private int byPassword() {
    return given().auth().preemptive().basic(name, PASSWORD).get("/api/me").statusCode();
  }

  private String token() {
    return sends("/api/tokens", "{'name': 'scale'}").statusCode(201).extract().path("token");
  }

  private static int byToken(String token) {
    return given().header("Authorization", "Bearer " + token).get("/api/me").statusCode();
  }

  private List<String> events() {
    return Owner.reads("/api/entrance-log?person=" + name).extract().jsonPath().get("items.what");
  }

  @Test
  void a_phone_is_set_up_on_pages_and_its_code_is_asked_for_from_then_on() throws Exception {
    String token = token();
    PageReader reader = PageReader.as(name, PASSWORD);
    Document page = reader.reads("/me/codes");
    Document first = PageReader.page(reader.sends(page, "/me/codes", "current", PASSWORD), 200);
    PhoneFixture phone =
        new PhoneFixture(first.selectFirst("main .secret").text().replace(" ", ""));
    assertEquals(
        "otpauth://totp/Barreltally:%s?secret=%s&issuer=Barreltally".formatted(name, phone.seed()),
        ScannedSvg.text(first.selectFirst("svg.code")));
    assertEquals(200, byPassword(), "nothing is asked for yet");

    Document again =
        PageReader.page(reader.sends(first, "/me/codes/confirm", "code", "12 34"), 422);
    assertTrue(again.text().contains("The code does not fit"), again::text);
    assertEquals(
        first.selectFirst("main .secret").text(), again.selectFirst("main .secret").text());

    String code = phone.shows(clock.instant());
    String typed = code.substring(0, 3) + " " + code.substring(3);
    Document spare = PageReader.page(reader.sends(again, "/me/codes/confirm", "code", typed), 200);
    assertEquals(Codes.SPARE, spare.select("main .secret").eachText().stream().distinct().count());
    assertEquals(
        303,
        given()
            .redirects()
            .follow(false)
            .cookie("barreltally-session", reader.session())
            .get("/me")
            .statusCode(),
        "signed out");

    assertEquals(401, byPassword());
    assertEquals(200, byToken(token));
    assertEquals(401, signsIn("").statusCode());
    assertEquals(401, signsIn("000000").statusCode());
    assertEquals(401, signsIn(code).statusCode(), "the code that was confirmed");
    assertEquals(303, signsIn(spare.selectFirst("main .secret").text()).statusCode());
    assertTrue(
        events().containsAll(List.of("codes-on", "did-not-fit", "signed-in")), events()::toString);
  }

  @Test
  void whoever_was_judged_before_codes_were_asked_for_gets_no_session_after() {
    Users.Known judged = passwords.judge(name, PASSWORD, null, null).orElseThrow();
    phone();
    assertEquals(Optional.empty(), sessions.begin(judged, null));
  }

  @Test
  void each_code_signs_in_once_and_none_before_it_after() {
    PhoneFixture phone = phone();
    Instant now = clock.instant();
    String next = phone.shows(now.plusSeconds(30));
    assertEquals(303, signsIn(next).statusCode());
    assertEquals(401, signsIn(next).statusCode());
    assertEquals(401, signsIn(phone.shows(now)).statusCode(), "shown before the one taken");
  }

  @Test
  void a_spare_code_signs_in_once_however_it_is_typed() {
    PhoneFixture phone = new PhoneFixture(codes.begin(name, PASSWORD).seed());
    List<String> spare = codes.confirm(id(), phone.shows(clock.instant()));
    String typed = spare.get(3).toUpperCase().replace('-', ' ').replace('0', 'O').replace('1', 'I');
    assertEquals(303, signsIn(typed).statusCode());
    assertEquals(401, signsIn(spare.get(3)).statusCode());
    assertEquals(Codes.SPARE - 1, codes.state(id()).spareLeft());
    assertEquals(303, signsIn(spare.get(4)).statusCode());
  }

  @Test
  void after_a_hundred_wrong_ones_in_a_row_only_a_spare_code_is_taken() {
    PhoneFixture phone = new PhoneFixture(codes.begin(name, PASSWORD).seed());
    List<String> spare = confirms(phone);
    for (int n = 0; n < 100; n++) {
      rows.miss(id());
    }
    assertEquals(401, signsIn(phone.shows(clock.instant())).statusCode());
    assertEquals(303, signsIn(spare.get(0)).statusCode());
    assertEquals(303, signsIn(phone.shows(clock.instant().plusSeconds(30))).statusCode());
  }

  /** Or else whoever knows the password could try all codes, ten in five minutes at most. */
  @Test
  void wrong_codes_count_as_wrong_passwords_do_and_wrong_passwords_not_as_codes() {
    phone();
    for (int n = 0; n < Passwords.ATTEMPTS_MAX; n++) {
      assertEquals(401, signsIn("00000" + n).statusCode());
    }
    assertEquals(429, signsIn("000000").statusCode());
    int misses = rows.of(id()).orElseThrow().misses();
    assertTrue(misses >= Passwords.ATTEMPTS_MAX - 1, "one may have been right by chance");

    String other = people.with("packing", "another password");
    codes.begin(other, "another password");
    given()
        .formParam("username", other)
        .formParam("password", "guessed")
        .formParam("code", "1")
        .post("/sign-in")
        .then()
        .statusCode(401);
    assertEquals(0, rows.of(users.named(other).orElseThrow().person().id()).orElseThrow().misses());
  }

  @Test
  void codes_are_stopped_with_password_and_code_alone() {
    String token = token();
    PhoneFixture phone = phone();
    String session = signsIn(phone.shows(clock.instant())).cookie("barreltally-session");
    String code = phone.shows(clock.instant().plusSeconds(30));
    for (String said :
        List.of(
            "{'current': 'guessed', 'code': '%s'}".formatted(code),
            "{'current': '%s'}".formatted(PASSWORD),
            "{'current': '%s', 'code': '12345x'}".formatted(PASSWORD))) {
      byToken(token, "/api/me/codes/stop", said).statusCode(422);
    }
    assertTrue(codes.state(id()).on());
    byToken(
            token,
            "/api/me/codes/stop",
            "{'current': '%s', 'code': '%s'}".formatted(PASSWORD, code))
        .statusCode(204);
    assertEquals(200, byPassword());
    assertEquals(
        303,
        given()
            .redirects()
            .follow(false)
            .cookie("barreltally-session", session)
            .get("/me")
            .statusCode());
    assertEquals("codes-off", events().get(0));
  }

  private static ValidatableResponse byToken(String token, String path, String body) {
    return given()
        .header("Authorization", "Bearer " + token)
        .contentType("application/json")
        .body(body.replace('\'', '"'))
        .post(path)
        .then();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/api/me/codes|{'current': 'guessed'}|422|wrong-password",
        "/api/me/codes|{}|422|wrong-password",
        "/api/me/codes/confirm|{'code': '123456'}|409|no-codes-begun",
        "/api/me/codes/confirm|{}|409|no-codes-begun"
      })
  void what_does_not_fit_is_refused(String path, String body, int status, String code) {
    JsonPath said = sends(path, body).statusCode(status).extract().jsonPath();
    assertEquals(code, said.getString("code"));
  }

  @ParameterizedTest
  @CsvSource({"''", "12345", "1234567", "spare-codes-are-none-yet"})
  void the_first_code_must_be_one_of_the_phone(String code) {
    codes.begin(name, PASSWORD);
    JsonPath said =
        sends("/api/me/codes/confirm", "{'code': '%s'}".formatted(code))
            .statusCode(422)
            .extract()
            .jsonPath();
    assertEquals("wrong-code", said.getString("code"));
    assertEquals("code", said.getString("errors[0].field"));
    assertEquals(200, byPassword());
  }

  @Test
  void a_second_phone_is_set_up_only_after_the_first_was_stopped() {
    String token = token();
    phone();
    byToken(token, "/api/me/codes", "{'current': '%s'}".formatted(PASSWORD))
        .statusCode(409)
        .body("code", org.hamcrest.Matchers.equalTo("codes-already-on"));
  }

  @Test
  void the_owner_helps_who_lost_the_phone() {
    phone();
    PageReader owner = PageReader.owner();
    Document page = owner.reads("/people/" + name);
    assertTrue(page.text().contains("asked for beside the password"), page::text);
    assertEquals(
        "/people/" + name, PageReader.sentTo(owner.sends(page, "/people/" + name + "/codes")));
    assertEquals(200, byPassword());
    assertEquals("codes-off", events().get(0));
    assertFalse(owner.reads("/people/" + name).text().contains("asked for beside"));
  }

  @Test
  void a_new_password_from_the_owner_leaves_the_codes_as_they_are() {
    PhoneFixture phone = phone();
    String fresh =
        Owner.asks().post("/api/people/" + name + "/password").then().extract().path("password");
    assertEquals(401, given().auth().preemptive().basic(name, fresh).get("/api/me").statusCode());
    assertEquals(401, signsIn(fresh, "").statusCode());
    assertEquals(303, signsIn(fresh, phone.shows(clock.instant())).statusCode());
  }

  @Test
  void whoever_leaves_and_comes_back_sets_up_codes_anew() {
    phone();
    Owner.asks().post("/api/people/" + name + "/leave").then().statusCode(200);
    String fresh =
        Owner.asks().post("/api/people/" + name + "/return").then().extract().path("password");
    assertEquals(200, given().auth().preemptive().basic(name, fresh).get("/api/me").statusCode());
  }

  @Test
  void a_form_of_ones_own_secrets_is_not_carried_along_when_the_session_ended() {
    Response answer =
        given()
            .redirects()
            .follow(false)
            .header("Accept", "text/html")
            .formParam("current", PASSWORD)
            .post("/me/codes");
    assertEquals(303, answer.statusCode());
    assertFalse(Jsoup.parse(answer.asString()).html().contains(PASSWORD));
  }
}
