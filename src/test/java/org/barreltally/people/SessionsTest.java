package org.barreltally.people;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.internal.Users;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Everybody sees where they are signed in, and ends it elsewhere. */
@QuarkusTest
class SessionsTest {

  private static final String PASSWORD = "what somebody chose";

  @Inject PersonFixture people;
  @Inject PageSessions sessions;
  @Inject Passwords passwords;
  @Inject Users users;

  private String name;

  @BeforeEach
  void somebody() {
    name = people.with("bookkeeper", PASSWORD);
  }

  private static boolean isOpen(String session) {
    return given()
            .redirects()
            .follow(false)
            .cookie("barreltally-session", session)
            .get("/me")
            .statusCode()
        == 200;
  }

  private ValidatableResponse ends(String body) {
    return given()
        .auth()
        .preemptive()
        .basic(name, PASSWORD)
        .contentType("application/json")
        .body(body.replace('\'', '"'))
        .post("/api/me/sessions/end")
        .then();
  }

  private List<String> ids() {
    return given()
        .auth()
        .preemptive()
        .basic(name, PASSWORD)
        .get("/api/me/sessions")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getList("items.id");
  }

  @Test
  void the_page_shows_them_and_ends_all_but_its_own() {
    PageReader phone = PageReader.as(name, PASSWORD);
    PageReader laptop = PageReader.as(name, PASSWORD);
    Document page = laptop.reads("/me/sessions");
    assertEquals(2, page.select("main tbody tr").size());
    assertEquals(1, page.select("main tbody th:contains(here)").size());
    assertTrue(page.select("main tbody").text().contains("127.0.0.1"), page::text);

    Document refused =
        PageReader.page(
            laptop.sends(page, "/me/sessions/end", "session", "", "current", "guessed"), 422);
    assertTrue(refused.text().contains("The present password is not right"), refused::text);
    assertTrue(isOpen(phone.session()));

    assertEquals(
        "/me/sessions",
        PageReader.sentTo(
            laptop.sends(page, "/me/sessions/end", "session", "", "current", PASSWORD)));
    assertTrue(isOpen(laptop.session()));
    assertEquals(false, isOpen(phone.session()));
    assertEquals(
        "signed-out",
        Owner.reads("/api/entrance-log?person=" + name).extract().path("items[0].what"));
  }

  @Test
  void one_is_ended_by_its_id_and_nobody_elses() {
    PageReader first = PageReader.as(name, PASSWORD);
    String firstId = ids().get(0);
    PageReader second = PageReader.as(name, PASSWORD);
    ends("{'current': '%s', 'session': '%s'}".formatted(PASSWORD, firstId)).statusCode(204);
    assertEquals(false, isOpen(first.session()));
    assertTrue(isOpen(second.session()));

    String other = people.with("table", PASSWORD);
    PageReader others = PageReader.as(other, PASSWORD);
    JsonPath theirs =
        given().auth().preemptive().basic(other, PASSWORD).get("/api/me/sessions").jsonPath();
    for (String id : List.of(theirs.getString("items[0].id"), firstId, "0123456789abcdef")) {
      ends("{'current': '%s', 'session': '%s'}".formatted(PASSWORD, id)).statusCode(404);
    }
    assertTrue(isOpen(others.session()));
  }

  /** With the name of a network card behind it (RFC 4007, 11) it is longer than any address. */
  @Test
  void an_address_of_the_house_alone_is_kept_without_the_card_it_came_by() {
    String alone = "fe80:0:0:0:1234:5678:9abc:def0";
    Users.Known judged = passwords.judge(name, PASSWORD, null, null).orElseThrow();
    sessions.begin(judged, alone + "%enx00e04c680001").orElseThrow();
    assertEquals(alone, sessions.of(judged.person().id(), null).get(0).from());
    passwords.judge(name, "guessed", alone + "%enx00e04c680001");
    assertEquals(
        alone, Owner.reads("/api/entrance-log?person=" + name).extract().path("items[0].address"));
  }

  @Test
  void one_more_than_twenty_ends_the_one_that_was_used_longest_ago() {
    List<String> begun = new ArrayList<>();
    for (int n = 0; n <= PageSessions.most(); n++) {
      Users.Known judged = passwords.judge(name, PASSWORD, null, null).orElseThrow();
      begun.add(sessions.begin(judged, null).orElseThrow().secret());
    }
    assertEquals(PageSessions.most(), ids().size());
    assertEquals(false, isOpen(begun.get(0)));
    assertTrue(isOpen(begun.get(1)));
    assertTrue(isOpen(begun.get(PageSessions.most())));
  }
}
