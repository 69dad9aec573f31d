package org.barreltally.pricing;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;

/**
 * A price list as it is entered.
 *
 * @param name at most 100 characters
 * @param validTo the last day; null while it is open
 * @param taxIncluded whether the prices have the tax in them; null for no
 * @param lines 1 to 1000
 * @param deals at most 200; null for none
 * @param replaces the list whose new version this is; null for a new list
 */
public record EnterPriceList(
    String name,
    Audience audience,
    LocalDate validFrom,
    LocalDate validTo,
    Boolean taxIncluded,
    List<Line> lines,
    List<SaidDeal> deals,
    UUID replaces) {

  /**
   * @param grade null for every grade that has no line of its own
   * @param productClass for tax; null for food
   */
  public record Line(String container, ColorClass grade, Money price, ProductClass productClass) {}

  /**
   * @param grade null for jars of any grade, mixed as the buyer likes
   */
  public record SaidDeal(String container, ColorClass grade, Integer count, Money price) {}
}
