package org.barreltally.reconciliation;

import java.util.List;

/**
 * Who can tell from sap and boilings how much syrup a season made. Whoever implements it as a bean
 * adds a check to the barrels' weighings; without one they stand alone.
 */
public interface ProductionSums {

  /** What was made in a season; empty if nothing is known of it. */
  List<Production> of(int season);
}
