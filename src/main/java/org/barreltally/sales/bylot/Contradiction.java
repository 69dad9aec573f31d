package org.barreltally.sales.bylot;

/**
 * More jars of a lot left a table than can have come there: a label was misread, a pack-out is
 * missing, or jars were counted wrong. Somebody should look.
 *
 * @param pieces how many too many
 */
public record Contradiction(String place, String lot, long pieces) {}
