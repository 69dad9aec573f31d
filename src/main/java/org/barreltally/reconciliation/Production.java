package org.barreltally.reconciliation;

/**
 * Syrup that a boiling, or a season of them, is reckoned to have made, known without the barrels it
 * went into.
 *
 * @param name a few words, different from those of the others
 * @param grams of syrup
 * @param u standard uncertainty, grams, above zero
 */
public record Production(String name, double grams, double u) {}
