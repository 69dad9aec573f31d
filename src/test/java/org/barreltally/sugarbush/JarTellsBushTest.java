package org.barreltally.sugarbush;

import static io.restassured.RestAssured.given;
import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.sugarbush.boiling.Woods.leasedBush;
import static org.barreltally.sugarbush.boiling.Woods.ownBush;
import static org.barreltally.sugarbush.boiling.Woods.sap;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import org.barreltally.Owner;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

/** Whoever scans a jar reads in which bushes its sap was gathered, and not whose they are. */
@QuarkusTest
class JarTellsBushTest {

  private static final int SEASON = 2009;

  @Test
  void bushes_that_gave_sap_before_the_last_boil_are_named() {
    String own = ownBush(SEASON, 40);
    String leased = leasedBush(SEASON, 30);
    String later = ownBush(SEASON, 20);
    String tapped = ownBush(SEASON, 10);
    String tank = newTag("T");
    posts("/api/sap", sap(SEASON + "-03-02", own, 300, 2, tank)).statusCode(201);
    posts("/api/sap", sap(SEASON + "-03-03", leased, 200, 2, tank)).statusCode(201);
    posts("/api/sap", sap(SEASON + "-04-20", later, 100, 2, tank)).statusCode(201);

    String shown = jar(canned(SEASON + "-03-14"));
    assertTrue(shown.contains(own), shown);
    assertTrue(shown.contains(leased), shown);
    assertFalse(shown.contains(later), "gathered after the barrel was filled: " + shown);
    assertFalse(shown.contains(tapped), "gave no sap: " + shown);
    assertFalse(shown.contains("Odile"), "whose the trees are: " + shown);
  }

  @Test
  void sap_that_was_taken_back_names_no_bush() {
    String own = ownBush(SEASON, 40);
    String entry =
        posts("/api/sap", sap(SEASON + "-03-02", own, 300, 2, newTag("T")))
            .statusCode(201)
            .extract()
            .path("id");
    posts("/api/sap/" + entry + "/reversal", "{'reason': 'It was the other tank.'}")
        .statusCode(201);
    assertFalse(jar(canned(SEASON + "-03-15")).contains(own));
  }

  private static String canned(String filledOn) {
    String tag = newTag("J");
    posts("/api/barrels", barrel(tag, SEASON, filledOn, 486.5, 42.0, 66.9, 62)).statusCode(201);
    return posts(
            "/api/canning/runs",
            """
            {'on': '%d-06-20', 'draws': [{'barrel': '%s', 'all': true}],
             'fillTemperature': {'value': 185, 'unit': 'degF'},
             'fills': [{'container': 'PT', 'count': 300}], 'transmittance': 57, 'taste': 'clean'}
            """
                .formatted(SEASON, tag))
        .statusCode(201)
        .extract()
        .path("lot");
  }

  /** The page as a stranger reads it. */
  private static String jar(String lot) {
    Owner.asks().put("/api/public-lots/" + lot).then().statusCode(200);
    String page =
        given().accept("text/html").get("/jar/" + lot).then().statusCode(200).extract().asString();
    return Jsoup.parse(page).text();
  }
}
