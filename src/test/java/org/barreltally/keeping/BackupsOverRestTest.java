package org.barreltally.keeping;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import org.barreltally.Owner;
import org.barreltally.people.PersonFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The owner alone makes, lists and fetches backups. */
@QuarkusTest
class BackupsOverRestTest {

  private static final String SECRET = "of a helper at a table";

  @Inject PersonFixture people;

  @Test
  void a_backup_is_made_listed_and_fetched() {
    JsonPath made =
        Owner.asks()
            .post("/api/backups")
            .then()
            .statusCode(201)
            .header("Location", containsString("/api/backups/barreltally-"))
            .body("name", matchesPattern("barreltally-[0-9]{8}T[0-9]{9}Z\\.zip"))
            .body("rows", greaterThan(10))
            .body("tables.table", hasItem("movements"))
            .body("tables.table", not(hasItem("sessions")))
            .extract()
            .jsonPath();
    Owner.reads("/api/backups?limit=1").body("items[0].sha256", equalTo(made.get("sha256")));

    byte[] file =
        Owner.asks()
            .get("/api/backups/" + made.get("name"))
            .then()
            .statusCode(200)
            .contentType("application/zip")
            .header("Content-Disposition", containsString(made.getString("name")))
            .extract()
            .asByteArray();

    assertEquals(made.getInt("bytes"), file.length);
    assertEquals(made.getString("sha256"), Forged.sha256(file));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "nothing.zip",
        "barreltally-20260620T210500123Z.zip",
        "barreltally-20269999T999999999Z.zip",
        "..%2F..%2Fpom.xml",
        "..%5C..%5Cpom.xml",
        "%2Fetc%2Fpasswd",
        "barreltally-20260620T210500123Z.zip.sha256",
        "barreltally-20260620T210500123Z.zip%0A"
      })
  void no_other_file_can_be_fetched(String name) {
    Owner.asks()
        .urlEncodingEnabled(false)
        .get("/api/backups/" + name)
        .then()
        .statusCode(404)
        .body(not(containsString("<project")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"canning", "table", "packing", "bookkeeper"})
  void it_is_nobody_elses(String role) {
    String name = people.with(role, SECRET);
    String one = Owner.asks().post("/api/backups").then().statusCode(201).extract().path("name");

    given().auth().preemptive().basic(name, SECRET).post("/api/backups").then().statusCode(403);
    given().auth().preemptive().basic(name, SECRET).get("/api/backups").then().statusCode(403);
    given()
        .auth()
        .preemptive()
        .basic(name, SECRET)
        .get("/api/backups/" + one)
        .then()
        .statusCode(403);
    given().get("/api/backups/" + one).then().statusCode(401);
  }
}
