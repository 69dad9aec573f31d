package org.barreltally.shows.plan;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.math.BigDecimal;
import java.util.List;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;

/**
 * What the owner says when asking what to take; every field may be left out.
 *
 * @param costs of a wrong number
 * @param visitors expected over all days; else as the show is booked
 * @param vehicleLoad the most the vehicle should carry; else as the show is booked
 * @param otherLoad canopy, tables, cooler and whatever else rides along
 * @param displayPercent of the shelves kept for awards and pictures, 0 to under 100
 * @param refills how often the table is filled up again from boxes beneath, 0 to 20
 * @param jarsPer100Visitors the first guess for all kinds together
 * @param firstGuess the first guess for single kinds
 * @param footprints room a container takes, where it was measured
 * @param only the kinds to plan; all in stock where it is left out
 */
public record PlanQuestion(
    CostsSaid costs,
    Integer visitors,
    Quantity vehicleLoad,
    Quantity otherLoad,
    BigDecimal displayPercent,
    Integer refills,
    BigDecimal jarsPer100Visitors,
    @JsonSetter(contentNulls = Nulls.FAIL) List<Guess> firstGuess,
    @JsonSetter(contentNulls = Nulls.FAIL) List<Room> footprints,
    @JsonSetter(contentNulls = Nulls.FAIL) List<Kind> only) {

  /**
   * Costs.
   *
   * @param marginPercent of the price that is left after making the jar, above 0 to 100
   * @param runningOut what it costs, beyond the margin, to send a buyer away
   * @param cartingBack what it costs to bring a jar home again, breakage and wet labels included
   */
  public record CostsSaid(BigDecimal marginPercent, Money runningOut, Money cartingBack) {}

  /** So many of this kind to a hundred visitors. */
  public record Guess(String container, ColorClass grade, BigDecimal per100Visitors) {}

  /** Inches along the aisle and from front to back, the gap to the next jar included. */
  public record Room(String container, BigDecimal widthInches, BigDecimal depthInches) {}

  /** A container, of one grade or (without) of all. */
  public record Kind(String container, ColorClass grade) {

    boolean takesIn(JarKind jar) {
      return jar.container().equals(container) && (grade == null || grade == jar.grade());
    }
  }

  public PlanQuestion {
    costs = costs == null ? new CostsSaid(null, null, null) : costs;
    firstGuess = firstGuess == null ? List.of() : List.copyOf(firstGuess);
    footprints = footprints == null ? List.of() : List.copyOf(footprints);
    only = only == null ? List.of() : List.copyOf(only);
  }
}
