package org.barreltally.measure;

import java.util.List;
import java.util.OptionalDouble;
import org.barreltally.refusal.InvalidField;

/** What comes of pouring syrups (and water) together. */
public final class Blend {
  /** Blends within this of the target count as being there, °Bx: noise of the arithmetic. */
  private static final double SAME_BRIX = 1e-9;

  private Blend() {}

  /**
   * One of the syrups.
   *
   * @param grams mass, zero or more
   * @param brix true °Brix, 0..70; 0 is water
   * @param transmittance %Tc over 0 up to 100, or null when not measured
   */
  public record Part(double grams, double brix, Double transmittance) {
    /**
     * @throws InvalidField when mass or transmittance is out of its range
     * @throws OutsideDensityRange when brix is
     */
    public Part {
      if (!(grams >= 0 && grams < Double.POSITIVE_INFINITY)) {
        throw new InvalidField("grams", "A part of a blend cannot weigh less than nothing.");
      }
      Sucrose.checkBrix(brix);
      if (transmittance != null && !(transmittance > 0 && transmittance <= 100)) {
        throw new InvalidField(
            "transmittance", "Give the light transmittance in percent, over 0 and up to 100.");
      }
    }

    /** Water added to a blend: no sugar, no colour. */
    public static Part water(double grams) {
      return new Part(grams, 0, 100.0);
    }
  }

  /**
   * °Brix of the blend: sugar over mass, so exact.
   *
   * @throws InvalidField when there is nothing to blend
   */
  public static double brix(List<Part> parts) {
    double sugar = 0;
    for (Part part : parts) {
      sugar += part.grams() * part.brix();
    }
    return sugar / grams(parts);
  }

  /**
   * Estimate of the blend's %Tc; empty when a part has none measured. By the Beer–Lambert law
   * (IUPAC Gold Book) absorbance −log₁₀(T/100) goes with colouring matter per volume, and that
   * matter is neither made nor lost: each part's absorbance counts with its volume at 20 °C, over
   * the volume of the blend. An estimate only; the grade needs a reading.
   *
   * @throws InvalidField when there is nothing to blend
   */
  public static OptionalDouble transmittanceEstimate(List<Part> parts) {
    double colour = 0;
    for (Part part : parts) {
      if (part.transmittance() == null) {
        return OptionalDouble.empty();
      }
      double absorbance = -Math.log10(part.transmittance() / 100);
      colour += absorbance * new Syrup(part.brix()).mLAt20(part.grams());
    }
    double volume = new Syrup(brix(parts)).mLAt20(grams(parts));
    return OptionalDouble.of(100 * Math.pow(10, -colour / volume));
  }

  /**
   * Grams of water that bring a blend down to a target °Brix; the sugar stays.
   *
   * @throws BlendTooLight when the blend is below the target already
   * @throws InvalidField when the target is not over 0
   */
  public static double waterFor(double grams, double brix, double targetBrix) {
    if (!(targetBrix > 0)) {
      throw new InvalidField("targetBrix", "Give a target over 0 °Bx.");
    }
    if (brix < targetBrix - SAME_BRIX) {
      throw new BlendTooLight(brix, targetBrix);
    }
    return Math.max(0, grams * (brix / targetBrix - 1));
  }

  private static double grams(List<Part> parts) {
    double grams = parts.stream().mapToDouble(Part::grams).sum();
    if (grams == 0) {
      throw new InvalidField("draws", "There is nothing to blend: give at least one part.");
    }
    return grams;
  }
}
