package org.barreltally.documents;

import static org.barreltally.Owner.asks;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The paper of a boil. */
@QuarkusTest
class BoilLogTest {

  private static final String DRAWN =
      """
      {'at': '2022-03-12T15:20:00Z', 'weight': {'value': %s, 'unit': 'lb'}, 'barrel': '%s',
       'density': {'reading': {'value': 66.9, 'unit': 'Brix'}, 'temperature': {'value': 68, 'unit': 'degF'},
                   'instrument': 'refractometer'}}
      """;

  /**
   * 100 gal of 8.0 °Bx at 68 °F make 100 / 10.75 = 9.30 gal by the rule of 86, and 100 / (88.2 / 8
   * − 0.32) = 9.34 by the revised one.
   */
  @Test
  void says_what_went_in_what_came_off_and_what_was_expected() throws Exception {
    String barrel = newTag("B");
    String boil = begun();
    posts("/api/boils/" + boil + "/draw-offs", DRAWN.formatted("102.3", barrel)).statusCode(201);
    String slip =
        posts("/api/boils/" + boil + "/draw-offs", DRAWN.formatted("77.7", barrel))
            .statusCode(201)
            .extract()
            .path("drawOffs[1].id");
    posts("/api/boils/" + boil + "/parts/" + slip + "/reversal", "{'reason': 'Pail and all'}")
        .statusCode(201);
    posts("/api/boils/" + boil + "/notes", "{'niter': 'A cupful', 'filterPress': 'Seven plates'}")
        .statusCode(201);

    byte[] pdf =
        asks()
            .get("/api/boils/" + boil + "/log.pdf")
            .then()
            .statusCode(200)
            .extract()
            .asByteArray();
    assertEquals(1, Page.pages(pdf));
    String text = Page.text(pdf).replaceAll("\\s+", " ");
    for (String said :
        new String[] {
          "Boil log, March 12, 2022",
          "12:00 to —",
          "Two cords of slabs",
          "1000 hPa",
          "211.3 °F, by the pressure of the air",
          "100 gal at 68 °F 8.0 100.0",
          "15:20 " + barrel + " 102.3 lb 66.9 102.3",
          "taken back, counts for nothing: Pail and all",
          "By 86 over the Brix 9.30 ±",
          "By the revised rule 9.34 ±",
          "within what the readings leave in doubt",
          "Niter A cupful",
          "Filter press Seven plates",
          "near 219 °F and clings",
          "Never open a filter press under pressure"
        }) {
      assertTrue(text.contains(said), () -> said + " in " + text);
    }
    assertFalse(text.contains("TAKEN BACK"), text);
    assertFalse(text.contains("compliant") || text.contains("is safe"), text);
  }

  @Test
  void a_boil_taken_back_says_so_on_top() throws Exception {
    String boil = begun();
    posts("/api/boils/" + boil + "/reversal", "{'reason': 'Another day'}").statusCode(201);
    byte[] pdf = asks().get("/api/boils/" + boil + "/log.pdf").asByteArray();
    assertTrue(Page.text(pdf).contains("TAKEN BACK: Another day"));
  }

  @Test
  void there_is_no_paper_of_no_boil() {
    asks()
        .get("/api/boils/" + UUID.randomUUID() + "/log.pdf")
        .then()
        .statusCode(404)
        .body("code", equalTo("unknown-sugarhouse-entry"));
  }

  private static String begun() {
    return posts(
            "/api/boils",
            """
            {'on': '2022-03-12', 'startedAt': '2022-03-12T12:00:00Z', 'targetBrix': 66.9,
             'fuel': 'Two cords of slabs', 'pressure': {'value': 1000, 'unit': 'hPa'},
             'feeds': [{'of': 'concentrate', 'tank': 'C-9', 'volume': {'value': 100, 'unit': 'gal'},
                        'temperature': {'value': 68, 'unit': 'degF'}, 'brix': 8.0}]}
            """)
        .statusCode(201)
        .extract()
        .path("id");
  }
}
