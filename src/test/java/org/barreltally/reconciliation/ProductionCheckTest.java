package org.barreltally.reconciliation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Uncertain;
import org.barreltally.reconciliation.flows.Reconciled;
import org.barreltally.reconciliation.flows.Reconciler;
import org.barreltally.reconciliation.internal.BookFlows.Moved;
import org.barreltally.reconciliation.internal.BookFlows.Reading;
import org.barreltally.reconciliation.internal.BookFlows.Stands;
import org.junit.jupiter.api.Test;

/** What a boiling is known to have made, told beside the barrels it went into. */
class ProductionCheckTest {

  private static final List<Moved> FILLED =
      List.of(
          new Moved("out:boiled", "bulk:S26-001:0", "filling", 200_000, 0, 1, false),
          new Moved("out:boiled", "bulk:S26-002:0", "filling", 190_000, 0, 1, false));

  @Test
  void without_it_two_barrels_weighed_once_cannot_be_checked() {
    Reconciled found = reconciled(List.of());
    assertEquals(0, found.globalTest().degreesOfFreedom());
    assertNull(found.critical());
  }

  /**
   * 400 kg reckoned, 390 kg weighed, each weighing with a standard uncertainty of 180 g: the
   * boiling with 3 kg takes 10 × 9/(9 + 0.0648) = 9.93 kg of the difference, 10/√9.0648 = 3.32 of
   * its standard uncertainties.
   */
  @Test
  void with_it_they_check_each_other() {
    Reconciled found = reconciled(List.of(new Production("by the sap", 400_000, 3_000)));
    assertEquals(1, found.globalTest().degreesOfFreedom());
    assertEquals(-9_928, found.flow("Boiled: by the sap").adjustment(), 1);
    assertEquals(3.321, Math.abs(found.flow("Boiled: by the sap").standardized()), 0.001);
    assertTrue(found.suspects().get(0).names("Boiled: by the sap"));
    // One balance checks all three: nothing tells which of them is wrong.
    assertEquals(
        3, found.suspects().get(0).readings().stream().filter(r -> r.flow() != null).count());
  }

  /**
   * The sugar fed should have given 391 kg ± 4 kg, 400 kg ± 0.3 kg were drawn by the log, and 390
   * kg ± 0.255 kg stand in barrels: the sap says that the log is wrong, not the barrels.
   */
  @Test
  void the_sugar_fed_is_a_third_opinion() {
    Reconciled found =
        reconciled(
            List.of(new Production("drawn off", 400_000, 300, new Uncertain(391_000, 4_000))));
    assertEquals(2, found.globalTest().degreesOfFreedom());
    // 391 − 390 = 1 kg is well within 4 kg; 400 − 390 = 10 kg is 25 times √(0.3² + 0.2546²) =
    // 0.393.
    assertTrue(found.suspects().get(0).names("Boiled: drawn off"));
    assertTrue(Math.abs(found.flow("Boiled: drawn off").standardized()) > 20);
    assertTrue(Math.abs(found.flow("Sugar fed: drawn off").standardized()) < 3);
  }

  private static Reconciled reconciled(List<Production> made) {
    List<Reading> readings =
        List.of(
            new Reading("S26-001", 0, "weighing", 200_000, 180),
            new Reading("S26-002", 0, "weighing", 190_000, 180));
    NodeNames names =
        new NodeNames(
            List.of(), List.<String[]>of(new String[] {"boiled", "Boiled"}), List.of(), FILLED);
    SeasonFacts facts = new SeasonFacts(FILLED, standing(), readings, List.of(), made, names);
    NetworkDraft draft = new NetworkDraft(names);
    Widths widths = new Widths(Instruments.usual());
    new NetworkBuilder(draft, widths, facts).build();
    new StandingFlows(draft, widths, facts).add();
    return Reconciler.reconcile(draft.network(2026).network());
  }

  private static List<Stands> standing() {
    return List.of(
        new Stands("bulk:S26-001", 0, 200_000, 1, 1, 0, false),
        new Stands("bulk:S26-002", 0, 190_000, 1, 1, 0, false));
  }
}
