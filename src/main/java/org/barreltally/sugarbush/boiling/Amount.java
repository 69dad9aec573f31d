package org.barreltally.sugarbush.boiling;

import org.barreltally.measure.Uncertain;

/**
 * So much sap, concentrate or syrup, each figure with its standard uncertainty. They hang together
 * (all come from the same volume and Brix), so none is to be made from another.
 *
 * @param tank it went to or came from; null without one
 * @param mL millilitres at 20 °C (68 °F)
 * @param grams mass
 * @param brix true °Brix
 * @param sugar grams of it
 */
public record Amount(
    Role role, String tank, Uncertain mL, Uncertain grams, Uncertain brix, Uncertain sugar) {}
