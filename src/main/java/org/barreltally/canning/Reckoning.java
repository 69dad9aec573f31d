package org.barreltally.canning;

import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;

/**
 * A batch and where all of it goes, in grams: into good jars, the heel, the filter, over the
 * contents, broken, or unexplained. The seven add up to the batch.
 *
 * @param unexplained may be negative: then the jars hold more than the book gave, within
 *     uncertainty
 */
record Reckoning(
    Batch batch,
    Quantity fillTemperature,
    List<Fill> fills,
    double filter,
    Uncertain weighedHeel,
    Uncertain unexplained) {

  double heel() {
    return weighedHeel.value();
  }

  double good() {
    return fills.stream().mapToDouble(Fill::goodGrams).sum();
  }

  double overfill() {
    return fills.stream().mapToDouble(Fill::overfilled).sum();
  }

  double broken() {
    return fills.stream().mapToDouble(Fill::brokenGrams).sum();
  }

  /** The jars filled, good and broken, by size in the order of the fills. */
  List<UsesSupplies.Jars> jars() {
    return fills.stream()
        .map(fill -> new UsesSupplies.Jars(fill.container().code(), fill.count() + fill.broken()))
        .toList();
  }

  /** What came in, with the water, and stands neither in good jars nor in the heel. */
  double shrink() {
    return batch.grams().value() - good() - heel();
  }
}
