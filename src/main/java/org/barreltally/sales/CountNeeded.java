package org.barreltally.sales;

import org.barreltally.measure.ColorClass;

/**
 * Jars at a table that the book has below zero: more left it than came there.
 *
 * @param lot whose jars stand below zero; null where all jars of the size together do
 * @param grade null where it is not known, or for all grades together
 * @param onTable pieces, below zero
 */
public record CountNeeded(
    String place, String container, ColorClass grade, String lot, long onTable, String why) {}
