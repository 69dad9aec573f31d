package org.barreltally.netcontents;

import java.math.BigDecimal;
import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;

/** What weights and lot size must be before anything is worked out. */
final class WeighedRules {

  /** A greater lot is a slip of the pen. */
  static final int LOT_MAX = 1_000_000;

  /** More over its contents than half is no overfill: the jar was weighed with it. */
  private static final double WITH_THE_JAR = 1.5;

  private static final int DECIMALS_MAX = 6;

  private WeighedRules() {}

  /**
   * @throws InvalidField if something is not said, or the lot is out of range
   */
  static void said(NetContentsOrder order) {
    if (order == null || order.container() == null) {
      throw new InvalidField("container", "Give the code of the container, for example PT.");
    }
    if (order.lotSize() == null || order.lotSize() < 2 || order.lotSize() > LOT_MAX) {
      throw new InvalidField(
          "lotSize", "Say how many jars the sample was drawn from, 2 to " + LOT_MAX + ".");
    }
    if (order.netWeights() == null || order.netWeights().isEmpty()) {
      throw new InvalidField(
          "netWeights", "Give the net weight of each jar in grams, without the jar.");
    }
  }

  /**
   * @throws InvalidField naming the first weight that cannot be one
   */
  static void weights(List<BigDecimal> weights, double nominalGrams) {
    for (int i = 0; i < weights.size(); i++) {
      BigDecimal weight = weights.get(i);
      String field = "netWeights[" + i + "]";
      if (weight == null || weight.signum() <= 0 || weight.scale() > DECIMALS_MAX) {
        throw new InvalidField(
            field, "Give grams, more than nothing, with at most " + DECIMALS_MAX + " decimals.");
      }
      if (weight.doubleValue() > WITH_THE_JAR * nominalGrams) {
        throw new InvalidField(
            field,
            "That is over one and a half times what the contents weigh (%s). Give the weight without the jar."
                .formatted(Quantity.rounded(nominalGrams, Unit.G, 1)));
      }
    }
  }
}
