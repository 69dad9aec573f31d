package org.barreltally.netcontents;

import org.barreltally.measure.Quantity;

/**
 * How the test of single jars came out; the parts as in {@link NetContentsCheck}.
 *
 * @param toleranceGrams null where there is no tolerance
 */
record Individual(
    Verdict verdict,
    Quantity tolerance,
    Double toleranceGrams,
    Integer beyond,
    Integer allowed,
    Integer beyondTwice,
    String words) {}
