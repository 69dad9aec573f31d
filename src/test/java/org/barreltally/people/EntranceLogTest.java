package org.barreltally.people;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.books.Books;
import org.barreltally.people.internal.RecentPasswords;
import org.barreltally.people.internal.Sessions;
import org.barreltally.people.internal.SlowHashing;
import org.barreltally.people.internal.TakenCodes;
import org.barreltally.people.internal.Users;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class EntranceLogTest {

  private static final String PASSWORD = "what somebody chose";

  @Inject PersonFixture people;
  @Inject Passwords passwords;
  @Inject Users users;
  @Inject SlowHashing hashing;
  @Inject Sessions sessions;
  @Inject RecentPasswords recent;
  @Inject TakenCodes codes;
  @Inject EntranceLog entranceLog;
  @Inject Books books;
  @Inject DataSource database;

  private static List<String> events(String name) {
    return log(name).getList("items.what");
  }

  private static JsonPath log(String name) {
    return reads("/api/entrance-log?person=" + name).extract().jsonPath();
  }

  @Test
  void who_comes_and_goes_is_kept_newest_first_with_the_address() {
    String name = people.with("table", PASSWORD);
    PageReader.as(name, PASSWORD).posts("/sign-out", java.util.Map.of());
    assertEquals(List.of("signed-out", "signed-in"), events(name));
    assertEquals(List.of("127.0.0.1", "127.0.0.1"), log(name).getList("items.address"));
  }

  @Test
  void an_attempt_that_was_refused_is_kept_and_the_first_that_was_not_looked_at() {
    String name = people.with("table", PASSWORD);
    for (int n = 0; n < Passwords.ATTEMPTS_MAX; n++) {
      assertEquals(Optional.empty(), passwords.judge(name, "wrong " + n, "192.0.2.31"));
    }
    for (int n = 0; n < 5; n++) {
      assertThrows(TooManyAttempts.class, () -> passwords.judge(name, PASSWORD, "192.0.2.31"));
    }
    List<String> kept = events(name);
    assertEquals("too-many", kept.get(0));
    assertEquals(Passwords.ATTEMPTS_MAX + 1, kept.size(), kept.toString());
    assertEquals("192.0.2.31", log(name).getString("items[0].address"));
  }

  @Test
  void one_network_that_tries_many_names_waits_and_others_do_not() {
    int most = 12;
    Passwords soonTired =
        new Passwords(users, hashing, sessions, recent, codes, entranceLog, books, most);
    for (int n = 0; n < most; n++) {
      String nobody = "nobody" + UUID.randomUUID().toString().substring(0, 8);
      assertEquals(
          Optional.empty(), soonTired.judge(nobody, "guessed", "2001:db8:7:1::" + n), "try " + n);
    }
    String name = people.with("table", PASSWORD);
    assertThrows(
        TooManyAttempts.class, () -> soonTired.judge(name, PASSWORD, "2001:db8:7:1::ffff"));
    assertTrue(soonTired.judge(name, PASSWORD, "2001:db8:7:2::1").isPresent());
    assertEquals(
        1,
        reads("/api/entrance-log?what=too-many&limit=500")
            .extract()
            .jsonPath()
            .getList("items.address", String.class)
            .stream()
            .filter(address -> address.startsWith("2001:db8:7:1:"))
            .count());
  }

  @Test
  void what_was_typed_as_a_name_that_nobody_has_is_not_kept() throws SQLException {
    String typed = "oops" + UUID.randomUUID().toString().substring(0, 8);
    given().auth().preemptive().basic(typed, "x").get("/api/me").then().statusCode(401);
    assertEquals(List.of(), events(typed));
    assertFalse(
        reads("/api/entrance-log?limit=500").extract().asString().contains(typed), "no such name");
    assertEquals(0, rowsWith(typed));
  }

  @Test
  void what_is_changed_about_people_and_their_keys_stands_there_too() {
    String name = "q" + UUID.randomUUID().toString().substring(0, 8);
    String first =
        posts("/api/people", "{'name': '%s', 'role': 'table'}".formatted(name))
            .statusCode(201)
            .extract()
            .path("password");
    String token =
        given()
            .auth()
            .preemptive()
            .basic(name, first)
            .contentType("application/json")
            .body("{\"name\": \"scale\"}")
            .post("/api/tokens")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    given()
        .auth()
        .preemptive()
        .basic(name, first)
        .contentType("application/json")
        .body("{\"current\": \"%s\", \"next\": \"%s\"}".formatted(first, PASSWORD))
        .post("/api/me/password")
        .then()
        .statusCode(204);
    given()
        .auth()
        .preemptive()
        .basic(name, PASSWORD)
        .delete("/api/tokens/" + token)
        .then()
        .statusCode(204);
    posts("/api/people/" + name + "/role", "{'role': 'packing'}").statusCode(200);
    Owner.asks().post("/api/people/" + name + "/leave").then().statusCode(200);
    JsonPath log = log(name);
    assertEquals(
        List.of("left", "role", "token-ended", "own-password", "token-made", "joined"),
        log.getList("items.what"));
    assertEquals("packing", log.getString("items[1].role"));
    assertEquals("owner", log.getString("items[1].by"));
    assertEquals("scale", log.getString("items[2].token"));
  }

  @Test
  void parts_of_the_log_make_the_whole() {
    String name = people.with("table", PASSWORD);
    for (int n = 0; n < 5; n++) {
      PageReader.as(name, PASSWORD);
    }
    List<String> whole = log(name).getList("items.id");
    assertEquals(5, whole.size());
    JsonPath part = reads("/api/entrance-log?limit=2&person=" + name).extract().jsonPath();
    JsonPath rest =
        reads("/api/entrance-log?person=" + name + "&after=" + part.getString("next"))
            .extract()
            .jsonPath();
    assertEquals(whole.subList(0, 2), part.getList("items.id"));
    assertEquals(whole.subList(2, 5), rest.getList("items.id"));
  }

  @Test
  void the_owner_sees_it_on_a_page_and_nobody_else() {
    String name = people.with("canning", PASSWORD);
    PageReader canning = PageReader.as(name, PASSWORD);
    String page = PageReader.owner().reads("/entrance-log?person=" + name).text();
    assertTrue(page.contains("Signed in"), page);
    given()
        .cookie("barreltally-session", canning.session())
        .get("/entrance-log")
        .then()
        .statusCode(403);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update entrance_log set address = null",
        "delete from entrance_log",
        "truncate entrance_log"
      })
  void it_stands(String change) throws SQLException {
    PageReader.owner();
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      assertThrows(SQLException.class, () -> statement.executeUpdate(change));
    }
  }

  private long rowsWith(String text) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        var rows =
            statement.executeQuery(
                "select count(*) from entrance_log l where l::text like '%" + text + "%'")) {
      rows.next();
      return rows.getLong(1);
    }
  }
}
