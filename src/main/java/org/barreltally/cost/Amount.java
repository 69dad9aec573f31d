package org.barreltally.cost;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;

/**
 * So much of something, and what it cost.
 *
 * @param count of jars; null for syrup in bulk
 * @param mass of syrup in bulk; null for jars
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Amount(Long count, Quantity mass, Money cost) {

  private static final double G_PER_KG = 1000;

  static Amount of(String container, long amount, Money cost) {
    return container == null
        ? new Amount(null, mass(amount), cost)
        : new Amount(amount, null, cost);
  }

  static Quantity mass(long grams) {
    return Quantity.rounded(grams / G_PER_KG, Unit.KG, 3);
  }

  static Quantity mass(BigDecimal grams) {
    return Quantity.rounded(grams.doubleValue() / G_PER_KG, Unit.KG, 3);
  }
}
