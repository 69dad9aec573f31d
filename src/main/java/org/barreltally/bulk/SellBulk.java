package org.barreltally.bulk;

import java.time.LocalDate;
import java.util.Map;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;

/**
 * What is said of a barrel sold whole.
 *
 * @param ours what our scale and our colour reading said
 * @param theirs what the buyer's said
 * @param agreed what is paid on
 * @param pricePerLb of the agreed grade; null where {@code prices} gives it
 * @param prices per lb by the code of a grade; every grade named above needs one. May be null where
 *     there is but one grade
 */
public record SellBulk(
    LocalDate on,
    Buyer buyer,
    Side ours,
    Side theirs,
    Side agreed,
    Money pricePerLb,
    Map<String, Money> prices) {

  /** Who bought it; kept where it can be removed. */
  public record Buyer(String name, String details) {}

  /**
   * One reading of the barrel.
   *
   * @param weight of the syrup, as a scale reads in air
   */
  public record Side(Quantity weight, ColorClass grade) {}
}
