package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.OptionalDouble;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Unit;

/**
 * What packed jars weigh on a scale, in grams: syrup and, where it is known, the empty container.
 */
@ApplicationScoped
class PackingWeights {

  /**
   * True Brix reckoned with for jars whose lot is not chosen yet: the density most state rules name
   * for finished syrup (66.9 °Bx at 68 °F, Vermont's rule).
   */
  private static final Syrup USUAL = new Syrup(66.9);

  private final Items items;
  private final Containers containers;

  PackingWeights(Items items, Containers containers) {
    this.items = items;
    this.containers = containers;
  }

  /**
   * One full jar.
   *
   * @param lot null where it is not chosen yet
   */
  double full(String container, String lot) {
    Container size = containers.at(container);
    double syrup = lot == null ? USUAL.gramsForML20(size.netML()) : syrup(container, lot, size);
    return USUAL.weightInAir(syrup) + empty(size).orElse(0);
  }

  private double syrup(String container, String lot, Container size) {
    return items
        .jarsOf(lot, container)
        .map(Item::gramsEach)
        .map(grams -> grams.doubleValue())
        .orElseGet(() -> USUAL.gramsForML20(size.netML()));
  }

  private static OptionalDouble empty(Container size) {
    return size.emptyWeight() == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(size.emptyWeight().doubleIn(Unit.G));
  }

  /** Of some containers, those whose empty weight nobody said. */
  List<String> withoutEmptyWeight(List<String> codes) {
    return codes.stream()
        .distinct()
        .filter(code -> empty(containers.at(code)).isEmpty())
        .sorted()
        .toList();
  }
}
