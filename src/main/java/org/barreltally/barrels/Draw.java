package org.barreltally.barrels;

import org.barreltally.measure.Uncertain;

/**
 * Syrup about to be drawn from a vessel.
 *
 * @param grams how much, with the standard uncertainty
 * @param all whether nothing is left by the book
 */
public record Draw(Barrel from, Uncertain grams, boolean all) {}
