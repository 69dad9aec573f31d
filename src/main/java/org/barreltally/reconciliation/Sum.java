package org.barreltally.reconciliation;

/**
 * What moved or stands on one line, of syrup of one density.
 *
 * @param brix at 20 °C; null for jars whose lot nobody wrote down
 * @param grams of syrup, above zero where it went there
 * @param jarGrams of them in jars
 * @param pieces of jars among it
 */
public record Sum(Line line, Double brix, double grams, double jarGrams, long pieces) {}
