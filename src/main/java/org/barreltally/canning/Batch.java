package org.barreltally.canning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.barreltally.barrels.Draw;
import org.barreltally.measure.Blend;
import org.barreltally.measure.BlendTooLight;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;

/**
 * The syrup in the canner: everything drawn, with the water that was added.
 *
 * @param grams all of it, water included
 * @param waterGrams of it
 * @param brix true Brix after the water
 * @param transmittance an estimate in %Tc by absorbance; empty when a part was not measured
 * @param seasons every crop year in it, ascending
 */
record Batch(
    List<Draw> draws,
    Uncertain grams,
    double waterGrams,
    Uncertain brix,
    OptionalDouble transmittance,
    List<Integer> seasons) {

  /**
   * Pours the draws together and thins them to the target.
   *
   * @param targetBrix null to leave the blend as it is
   * @throws BlendTooLight if the blend is below the target by more than its uncertainty
   */
  static Batch pour(List<Draw> draws, Double targetBrix) {
    List<Blend.Part> parts = new ArrayList<>();
    double grams = 0;
    double gramsVariance = 0;
    for (Draw draw : draws) {
      parts.add(
          new Blend.Part(
              draw.grams().value(),
              draw.from().lot().brix().value(),
              measurable(draw.from().lot().transmittance())));
      grams += draw.grams().value();
      gramsVariance += draw.grams().u() * draw.grams().u();
    }
    Uncertain drawn = new Uncertain(grams, Math.sqrt(gramsVariance));
    Uncertain brix = new Uncertain(Blend.brix(parts), brixUncertainty(draws, grams));
    double water = water(drawn, brix, targetBrix);
    if (water > 0) {
      parts.add(Blend.Part.water(water));
      brix = new Uncertain(Blend.brix(parts), brix.u());
    }
    return new Batch(
        List.copyOf(draws),
        new Uncertain(grams + water, drawn.u()),
        water,
        brix,
        Blend.transmittanceEstimate(parts),
        draws.stream().flatMap(d -> d.from().seasons().stream()).distinct().sorted().toList());
  }

  Syrup syrup() {
    return new Syrup(brix.value());
  }

  /** A reading of nothing let through has no absorbance to go by. */
  private static Double measurable(Double transmittance) {
    return transmittance == null || transmittance == 0 ? null : transmittance;
  }

  /** Brix is a mean by mass, so each part's uncertainty counts with its share of the mass. */
  private static double brixUncertainty(List<Draw> draws, double grams) {
    double variance = 0;
    for (Draw draw : draws) {
      double part = draw.grams().value() / grams * draw.from().lot().brix().u();
      variance += part * part;
    }
    return Math.sqrt(variance);
  }

  private static double water(Uncertain drawn, Uncertain brix, Double targetBrix) {
    if (targetBrix == null) {
      return 0;
    }
    boolean thereWithinUncertainty =
        brix.value() < targetBrix && !brix.differsFrom(Uncertain.exact(targetBrix));
    return thereWithinUncertainty ? 0 : Blend.waterFor(drawn.value(), brix.value(), targetBrix);
  }
}
