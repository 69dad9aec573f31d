package org.barreltally.reconciliation;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.regex.Pattern;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The year's balance as a page and as a picture. */
@QuarkusTest
class BalancePageTest {

  /**
   * 486.5 lb gross less 42 lb tare are 444.5 lb on the scale; what is boiled in the year is more by
   * that on the page. The page shows mass, and mass is more than the weight in air by the buoyancy
   * of syrup of 66.9 °Bx: about 0.0012 / 1.33 = 0.09 % of it, less that of steel weights, 0.015 %
   * (OIML R 111), so 444.8 lb.
   */
  @Test
  void what_was_boiled_stands_in_the_table_and_in_the_picture() {
    PageReader owner = PageReader.owner();
    double before = mass(owner.reads("/balance?season=2026"), "Boiled");
    newSize(16);
    posts("/api/barrels", barrel(newTag("B-"), 2026, "2026-03-14", 486.5, 42, 66.9, 62))
        .statusCode(201);
    Document page = owner.reads("/balance?season=2026");
    assertEquals(444.8, mass(page, "Boiled") - before, 0.3);
    assertNotNull(page.selectFirst("svg.flows title"));
    assertNotNull(page.selectFirst("svg.flows desc"));
    assertNotNull(page.selectFirst("svg.flows path.band.made"));
    String shown = row(page, "Boiled");
    assertTrue(page.selectFirst("svg.flows .name-made").text().contains(shown), shown);
    assertEquals(19, page.select("table.balance tbody tr:not(.group)").size());
  }

  @Test
  void a_year_without_syrup_has_no_picture_and_an_impossible_one_is_refused() {
    PageReader owner = PageReader.owner();
    Document page = owner.reads("/balance?season=1900");
    assertNull(page.selectFirst("svg.flows"));
    assertTrue(page.text().contains("No canning run yet"), page.text());
    assertEquals(400, Owner.asks().get("/api/reconciliation?season=soon").statusCode());
  }

  /**
   * A lot's bars are those of its sheet, the season's grow by just them, and go back when the run
   * is taken back. The page rounds to 0.01 gal.
   */
  @Test
  void what_canning_lost_is_added_up_from_the_sheets_of_the_year_or_of_one_lot() {
    PageReader owner = PageReader.owner();
    String size = newSize(16);
    String tag = newTag("B-");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 286.5, 42, 66.9, 62)).statusCode(201);
    String boiled = Owner.reads("/api/barrels/" + tag).extract().path("lot");
    double[] before = causes(owner.reads("/balance?season=2026"));
    double[] yearBefore = causes(owner.reads("/balance?season=2025"));
    JsonPath run =
        posts(
                "/api/canning/runs",
                """
                {'on': '2026-06-20', 'draws': [{'barrel': '%s', 'all': true}],
                 'fillTemperature': {'value': 186, 'unit': 'degF'},
                 'filterHoldUp': {'value': 4, 'unit': 'lb'}, 'overfill': {'value': 2, 'unit': 'g'},
                 'fills': [{'container': '%s', 'count': 170, 'broken': 3}],
                 'transmittance': 60, 'taste': 'clean'}
                """
                    .formatted(tag, size))
            .statusCode(201)
            .extract()
            .jsonPath();
    double[] sheet = new double[4];
    for (int n = 0; n < sheet.length; n++) {
      sheet[n] =
          run.getDouble(
              "shrink.byCause."
                  + List.of("filter", "overfill", "broken", "unexplained").get(n)
                  + ".value");
      assertTrue(sheet[n] > 0, run.prettify());
    }
    Document ofLot = owner.reads("/balance?season=2026&lot=" + run.getString("lot"));
    assertArrayEquals(sheet, causes(ofLot), 0.0051);
    assertTrue(ofLot.text().contains("One run."), ofLot.text());
    double[] after = causes(owner.reads("/balance?season=2026"));
    for (int n = 0; n < sheet.length; n++) {
      assertEquals(sheet[n], after[n] - before[n], 0.0151);
    }
    assertArrayEquals(yearBefore, causes(owner.reads("/balance?season=2025")), 0);
    take_back(run.getString("lot"));
    assertArrayEquals(before, causes(owner.reads("/balance?season=2026")), 0);
    assertArrayEquals(
        new double[4], causes(owner.reads("/balance?lot=" + run.getString("lot"))), 0);
    assertArrayEquals(new double[4], causes(owner.reads("/balance?lot=" + boiled)), 0);
  }

  private static void take_back(String lot) {
    String movement =
        Owner.reads("/api/movements?lot=" + lot)
            .extract()
            .path("items.find { it.kind == 'canning' }.id");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Told twice'}").statusCode(201);
  }

  /** The four bars in gallons; zeros where the page tells of no run. */
  private static double[] causes(Document page) {
    Element said = page.selectFirst("svg.shrink desc");
    return said == null
        ? new double[4]
        : Pattern.compile("([−-]?[0-9,]+\\.[0-9]+) gal")
            .matcher(said.text())
            .results()
            .mapToDouble(m -> Double.parseDouble(m.group(1).replace(",", "").replace("−", "-")))
            .toArray();
  }

  private static String row(Document page, String name) {
    return page.select("table.balance tr").stream()
        .filter(tr -> tr.selectFirst("th").text().equals(name))
        .findFirst()
        .orElseThrow()
        .selectFirst("td")
        .text();
  }

  private static double mass(Document page, String name) {
    return Double.parseDouble(row(page, name).replace(",", ""));
  }
}
