package org.barreltally.ledger;

import java.math.BigDecimal;
import java.util.UUID;

/**
 * What is counted: the syrup of a lot in grams, or its jars of one container in pieces.
 *
 * @param lot null for jars whose lot nobody wrote down
 * @param container null for syrup in bulk
 * @param gramsEach grams of syrup in one piece, fixed at packing; null for syrup in bulk and jars
 *     without a lot
 * @param grade the pool in which pieces can be promised; null for syrup in bulk, and for jars of
 *     which neither lot nor grade is known
 * @param held whether the lot was held when the item was made; later holds go through {@link Pools}
 */
public record Item(
    UUID id, String lot, String container, BigDecimal gramsEach, String grade, boolean held) {

  public static Item syrup(UUID id, String lot) {
    return new Item(id, lot, null, null, null, false);
  }

  public static Item jars(
      UUID id, String lot, String container, BigDecimal gramsEach, String grade) {
    return new Item(id, lot, container, gramsEach, grade, false);
  }

  public boolean isSyrup() {
    return container == null;
  }
}
