package org.barreltally.cost;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;

/**
 * What a lot cost, line by line, so that it can be followed on paper: a parent's line is its mass
 * times its own cost, which its own sheet explains.
 *
 * @param cameOf how it came to be; more than one where some of it came later
 */
public record LotCost(String lot, List<Coming> cameOf, String note) {

  public static final String ABSORBED =
      "Filter, overfill, breakage and shrink of a run have no cost of their own: its good jars and its heel bear it.";

  /**
   * @param used what went into it
   * @param carried what that cost
   * @param massIn of what went in; null where it came from outside
   * @param massGood of what came of it in good jars and heel
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Coming(
      LocalDate on,
      String by,
      List<Used> used,
      Money carried,
      Quantity massIn,
      Quantity massGood,
      List<Came> came) {}

  /** A parent, or jars of one taken back. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Used(String lot, String container, Amount amount, Money perKg) {}

  /**
   * @param syrup its share of what went in, by mass
   * @param added by costs, each with its working
   * @param cost of all of it
   * @param perKg null for jars
   * @param each of one jar; null for syrup in bulk
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Came(
      String container,
      Amount amount,
      Money syrup,
      List<Added> added,
      Money cost,
      Money perKg,
      Money each) {}

  /**
   * @param of {@code season, lot, run, container, supply}
   * @param working the sum in words
   */
  public record Added(String of, String name, String working, Money cost) {}
}
