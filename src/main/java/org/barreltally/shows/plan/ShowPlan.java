package org.barreltally.shows.plan;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;

/**
 * What to take to a show, and why.
 *
 * @param load all jars and what else rides along
 * @param carries the most the vehicle should carry; null where nobody said
 * @param shelfInches length of all shelves of the tables
 * @param shelfInchesForJars what is left of it beside the display of awards and pictures
 * @param shelfInchesTaken by the jars
 * @param expectedTakings null where no price is known
 * @param assumptions what was taken where nobody said better
 * @param cautions for those who load and drive
 */
public record ShowPlan(
    UUID show,
    List<Line> items,
    Quantity load,
    Quantity carries,
    double shelfInches,
    double shelfInchesForJars,
    double shelfInchesTaken,
    Money expectedTakings,
    List<String> assumptions,
    List<String> cautions) {

  /** What ended the number of an item. */
  public enum Limit {
    DEMAND,
    PROMISE,
    VEHICLE,
    TABLE;

    /** {@code demand, promise, vehicle, table}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One kind of jar, in pieces.
   *
   * @param take so many
   * @param wanted what would be taken if nothing were scarce
   * @param available what can be promised for this show
   * @param expected demand
   * @param low demand is lower one time in ten
   * @param high demand is higher one time in ten
   * @param enough the probability, 0 to 1, that what is taken meets demand
   * @param facings rows from front to back on the table
   * @param mass of so many filled jars
   * @param limitedBy what ended the number
   * @param why in one line
   */
  public record Line(
      String container,
      ColorClass grade,
      long take,
      long wanted,
      long available,
      double expected,
      long low,
      long high,
      double enough,
      int facings,
      Quantity mass,
      Limit limitedBy,
      String why) {}
}
