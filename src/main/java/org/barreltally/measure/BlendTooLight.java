package org.barreltally.measure;

import java.util.Locale;
import org.barreltally.refusal.Refusal;

/** Water only thins: a blend below its target cannot reach it. */
public final class BlendTooLight extends Refusal {
  private final double brix;
  private final double targetBrix;

  public BlendTooLight(double brix, double targetBrix) {
    super(
        Kind.RULE,
        "blend-too-light",
        "The blend is too light",
        String.format(
            Locale.ROOT,
            "The blend is %.2f °Bx, below the target of %.2f °Bx, and water only thins it. "
                + "Add heavier syrup, boil some of it further, or lower the target.",
            brix,
            targetBrix),
        "targetBrix");
    this.brix = brix;
    this.targetBrix = targetBrix;
  }

  public double brix() {
    return brix;
  }

  public double targetBrix() {
    return targetBrix;
  }
}
