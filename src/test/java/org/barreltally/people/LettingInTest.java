package org.barreltally.people;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.internal.PhoneFixture;
import org.barreltally.people.internal.Users;
import org.junit.jupiter.api.Test;

/** Somebody who lost everything is let in again from the machine itself. */
@QuarkusTest
class LettingInTest {

  private static final String PASSWORD = "what somebody chose";

  /** As the tests inside the program hash; the command itself is played by KeepingCommandsIT. */
  private static final int ITERATIONS = 2_000;

  @Inject PersonFixture people;
  @Inject Codes codes;
  @Inject Users users;
  @Inject DataSource book;
  @Inject Clock clock;

  private static int signsIn(String name, String password) {
    return given().auth().preemptive().basic(name, password).get("/api/me").statusCode();
  }

  @Test
  void with_a_new_password_no_codes_and_no_session_of_before() {
    String name = people.with("owner", PASSWORD);
    String session = PageReader.as(name, PASSWORD).session();
    UUID id = users.named(name).orElseThrow().person().id();
    PhoneFixture phone = new PhoneFixture(codes.begin(name, PASSWORD).seed());
    codes.confirm(id, phone.shows(clock.instant()));

    String fresh = new LettingIn(book, ITERATIONS).letIn(name, clock.instant()).orElseThrow();

    assertEquals(
        "let-in", Owner.reads("/api/entrance-log?person=" + name).extract().path("items[0].what"));
    assertEquals(401, signsIn(name, PASSWORD));
    assertEquals(200, signsIn(name, fresh));
    assertFalse(codes.state(id).on());
    assertEquals(
        303,
        given()
            .redirects()
            .follow(false)
            .cookie("barreltally-session", session)
            .get("/me")
            .statusCode());
  }

  @Test
  void nobody_and_who_left_are_not() {
    String name = people.with("table", PASSWORD);
    Owner.asks().post("/api/people/" + name + "/leave").then().statusCode(200);
    assertEquals(Optional.empty(), new LettingIn(book, ITERATIONS).letIn(name, clock.instant()));
    assertEquals(
        Optional.empty(), new LettingIn(book, ITERATIONS).letIn("nobody-at-all", clock.instant()));
  }
}
