package org.barreltally.recall;

import java.util.List;
import java.util.Map;
import org.barreltally.lots.JarsTold;
import org.barreltally.lots.Whereabouts;

/**
 * What a recall finds when it is asked.
 *
 * @param madeOf the share of each ancestor in the recalled lot
 * @param held whether each touched lot is held
 * @param onHand jars at places of the book, at home and out
 * @param syrup syrup in bulk at places of the book
 * @param gone jars that are with nobody any more: broken, discarded, sampled
 * @param holders who has the rest, by name
 * @param unnamed jars and syrup that left to people whose names are not known
 * @param accounted jars whose whereabouts the book knows
 * @param total jars made of the touched lots
 */
public record Findings(
    Recall recall,
    Map<String, Double> madeOf,
    Map<String, Boolean> held,
    List<JarsTold> onHand,
    List<Whereabouts.Bulk> syrup,
    List<JarsTold> gone,
    List<Holder> holders,
    List<Unnamed> unnamed,
    long accounted,
    long total) {

  /**
   * What people without a name have of a size.
   *
   * @param account the outside account of the book, for example {@code customer}
   * @param container null for syrup in bulk
   * @param surely pieces, or grams of syrup in bulk
   * @param possibly so many more, sold where nobody wrote the lot down
   */
  public record Unnamed(String account, String container, long surely, long possibly) {}
}
