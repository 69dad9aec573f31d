package org.barreltally.people;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.barreltally.PageReader;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Tokens are made and revoked on a page too: who is asked for codes has no other way. */
@QuarkusTest
class TokensPageTest {

  private static final String PASSWORD = "what somebody chose";

  @Inject PersonFixture people;

  private static int byToken(String token) {
    return given().header("Authorization", "Bearer " + token).get("/api/me").statusCode();
  }

  @Test
  void a_token_is_shown_once_and_revoked() {
    PageReader reader = PageReader.as(people.with("packing", PASSWORD), PASSWORD);
    Document made =
        PageReader.page(
            reader.sends(reader.reads("/tokens"), "/tokens", "name", "parcel scale"), 200);
    String token = made.selectFirst("main .secret").text();
    assertEquals(200, byToken(token));
    Document list = reader.reads("/tokens");
    assertTrue(list.text().contains("parcel scale"), list::text);
    assertFalse(list.html().contains(token));
    assertEquals("/tokens", PageReader.sentTo(reader.sends(list, "form[action$=/revoke]")));
    assertEquals(401, byToken(token));
    assertTrue(reader.reads("/tokens").text().contains("You have none"));
  }

  @Test
  void what_is_wrong_stands_beside_its_field() {
    PageReader reader = PageReader.as(people.with("packing", PASSWORD), PASSWORD);
    Document page = reader.reads("/tokens");
    assertEquals(
        "Give the token a name of 1 to 80 characters.",
        PageReader.beside(reader.sends(page, "/tokens", "name", " "), "name"));
    assertEquals(
        "Give a last day of use that is today or later.",
        PageReader.beside(
            reader.sends(page, "/tokens", "name", "scale", "expiresOn", "2020-01-01"),
            "expiresOn"));
  }

  @Test
  void who_only_reads_makes_none() {
    PageReader reader = PageReader.as(people.with("bookkeeper", PASSWORD), PASSWORD);
    Document page = reader.reads("/tokens");
    assertEquals(403, reader.sends(page, "/tokens", "name", "sums").statusCode());
  }
}
