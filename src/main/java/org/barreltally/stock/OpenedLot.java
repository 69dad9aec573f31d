package org.barreltally.stock;

import java.util.List;
import org.barreltally.measure.ColorClass;

/**
 * A lot that was entered as opening stock.
 *
 * @param tag of the barrel it is in; null for jars
 * @param grade null for a barrel that is not graded yet
 */
public record OpenedLot(
    String lot, String tag, List<Integer> seasons, ColorClass grade, boolean held) {}
