package org.barreltally.bulk;

import java.math.BigDecimal;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;

/**
 * One reading of a barrel sold, and what it comes to.
 *
 * @param weight as a scale reads in air
 * @param amount weight in lb times price, rounded once
 */
public record Figures(Quantity weight, ColorClass grade, Money pricePerLb, Money amount) {

  static Figures of(Quantity weight, ColorClass grade, Money pricePerLb) {
    return new Figures(weight, grade, pricePerLb, pricePerLb.times(weight.in(Unit.LB)));
  }

  BigDecimal pounds() {
    return weight.in(Unit.LB);
  }
}
