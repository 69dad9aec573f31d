package org.barreltally.reconciliation;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.posts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.barreltally.Owner;
import org.barreltally.books.InABlankBook;
import org.barreltally.reconciliation.flows.NetworkTooLarge;
import org.junit.jupiter.api.Test;

/** Seasons beyond what a small maker has: the flows are not weighed, the balance is told. */
@QuarkusTest
class LargeSeasonTest implements InABlankBook {

  @Inject SeasonFlows flows;

  @Test
  void runs_are_counted_before_flows_and_those_taken_back_are_not() {
    posts("/api/barrels", barrel("A", 2026, "2026-03-14", 486.5, 42, 66.9, 62)).statusCode(201);
    run("2026-06-20");
    String second = run("2026-06-21");
    int all = flows.of(2026).network().network().flows().size();
    assertTrue(all > 4, "each run is more than two flows: " + all);

    assertTrue(tooLarge(1).startsWith("2 runs "), "of two runs nothing else is gathered");
    assertTrue(tooLarge(2).startsWith(all + " flows "), "two runs may be two flows");
    assertEquals(all, flows.of(2026, all).network().network().flows().size());

    String movement =
        Owner.reads("/api/movements?lot=" + second)
            .extract()
            .path("items.find { it.kind == 'canning' }.id");
    posts("/api/movements/" + movement + "/reversal", "{'reason': 'Told twice'}").statusCode(201);
    int without = flows.of(2026).network().network().flows().size();
    assertTrue(tooLarge(1).startsWith(without + " flows "), "one run is left");
    assertTrue(tooLarge(0).startsWith("1 runs "));
  }

  /** 48 tanks of 80,000 lb are 1.3 million litres: 13 digits, were all written out in mL. */
  @Test
  void a_book_of_very_much_syrup_is_answered_as_well() {
    for (int n = 1; n <= 48; n++) {
      posts("/api/barrels", barrel("T-" + n, 2026, "2026-03-14", 80_042, 42, 66.9, 62))
          .statusCode(201);
    }
    // 48 · 80,000 lb · 0.45359237 kg/lb = 1,741,795 kg by the scale, and 0.075 % more by mass (air
    // against syrup and steel, OIML R 111)
    float kg = Owner.reads("/api/reconciliation?season=2026").extract().path("made.mass.value");
    assertEquals(1_741_795 * 1.00075, kg, 100);
  }

  private String tooLarge(int most) {
    return assertThrows(NetworkTooLarge.class, () -> flows.of(2026, most)).getMessage();
  }

  private static String run(String day) {
    return posts(
            "/api/canning/runs",
            """
            {'on': '%s', 'draws': [{'barrel': 'A', 'weight': {'value': 50, 'unit': 'lb'}}],
             'fillTemperature': {'value': 186, 'unit': 'degF'}, 'filterHoldUp': {'value': 1, 'unit': 'lb'},
             'fills': [{'container': 'PT', 'count': 30}], 'transmittance': 60, 'taste': 'clean'}
            """
                .formatted(day))
        .statusCode(201)
        .extract()
        .path("lot");
  }
}
