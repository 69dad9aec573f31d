package org.barreltally.reconciliation;

import org.barreltally.measure.Uncertain;

/**
 * Syrup that boilings are known to have made without the barrels it went into.
 *
 * @param name a few words, different from those of the others
 * @param grams of syrup
 * @param u standard uncertainty, grams, above zero
 * @param expected what the sugar fed to the pan should have given, grams; null where nobody knows
 */
public record Production(String name, double grams, double u, Uncertain expected) {

  /** Syrup of which nobody knows the sap. */
  public Production(String name, double grams, double u) {
    this(name, grams, u, null);
  }
}
