package org.barreltally.pricing;

import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.Refusal;

/** A jar has no price on the list. */
public final class NotOnPriceList extends Refusal {
  public NotOnPriceList(PriceList list, String container, ColorClass grade, String field) {
    super(
        Kind.RULE,
        "not-on-price-list",
        "The list has no price for it",
        "“%s” has no price for %s%s. Say the price, or choose another list."
            .formatted(
                list.name(),
                container,
                grade == null ? " where the grade is not known" : " " + grade.code()),
        field);
  }
}
