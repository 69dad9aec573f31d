package org.barreltally.sugarbush.boiling;

import java.util.List;
import org.barreltally.measure.Uncertain;

/**
 * What a season's log comes to, without what was taken back. Masses in grams, volumes in mL at 68
 * °F (20 °C), each with its standard uncertainty, whose square is its variance.
 *
 * @param bushes each with its sap, by name; those that only have taps too
 * @param sap gathered in all
 * @param sapSugar in it
 * @param concentrate what membranes made of sap
 * @param boils how many count
 * @param fed volume fed to the pan
 * @param fedSugar sugar in it
 * @param expected syrup by each boil's sugar and the Brix of its draw-offs, or its target; boils
 *     that nothing was drawn off yet are in it
 * @param drawn syrup drawn off
 * @param drawnML its volume
 * @param drawnSugar sugar in it
 */
public record ProductionSeason(
    int season,
    List<OfBush> bushes,
    Uncertain sap,
    Uncertain sapSugar,
    OfMembrane concentrate,
    int boils,
    Uncertain fed,
    Uncertain fedSugar,
    Uncertain expected,
    Uncertain drawn,
    Uncertain drawnML,
    Uncertain drawnSugar) {

  public ProductionSeason {
    bushes = List.copyOf(bushes);
  }

  /**
   * A bush's part.
   *
   * @param taps null where none were counted
   * @param brix of the sap, by mass over what was gathered; null where nothing was
   * @param agreed whether part of them was only agreed, not counted in the trees
   * @param share of the season's sugar gathered, 0 to 1; syrup is parted by it
   */
  public record OfBush(
      String bush,
      Integer taps,
      boolean agreed,
      Uncertain sap,
      Uncertain brix,
      Uncertain sugar,
      Uncertain share) {}

  /** What went through membranes. */
  public record OfMembrane(
      Uncertain taken, Uncertain takenSugar, Uncertain made, Uncertain madeSugar) {

    /** Sugar that did not come out, in the permeate or elsewhere. */
    public Uncertain lostSugar() {
      return takenSugar.minus(madeSugar);
    }
  }

  /** All taps of the season; 0 where none were counted. */
  public int taps() {
    return bushes.stream().mapToInt(bush -> bush.taps() == null ? 0 : bush.taps()).sum();
  }

  /** Drawn less expected, grams of syrup. */
  public Uncertain difference() {
    return drawn.minus(expected);
  }
}
