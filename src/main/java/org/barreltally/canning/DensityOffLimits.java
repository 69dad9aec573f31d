package org.barreltally.canning;

import java.util.Locale;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.refusal.Refusal;

/**
 * The finished syrup is lighter or heavier than the jurisdiction's limits, and nobody released it.
 */
public final class DensityOffLimits extends Refusal {
  public DensityOffLimits(double brix, Jurisdiction jurisdiction) {
    super(
        Kind.RULE,
        "density-off-limits",
        "Off the density limits",
        say(brix, jurisdiction),
        brix > jurisdiction.brixMax() ? "targetBrix" : "draws");
  }

  static String say(double brix, Jurisdiction jurisdiction) {
    return String.format(
        Locale.ROOT,
        "The syrup comes to %.2f °Bx; %s asks for %.1f to %.1f. %s, or release the run with a releaseReason.",
        brix,
        jurisdiction.name(),
        jurisdiction.brixMin(),
        jurisdiction.brixMax(),
        brix > jurisdiction.brixMax()
            ? "Heavy syrup may crystallize: set a targetBrix to thin it with water"
            : "Light syrup may mould or ferment: blend in heavier syrup or boil it further");
  }
}
