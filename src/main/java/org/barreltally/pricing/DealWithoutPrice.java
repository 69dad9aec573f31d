package org.barreltally.pricing;

import org.barreltally.refusal.Refusal;

/** A deal is for jars that have no price singly. */
public final class DealWithoutPrice extends Refusal {
  public DealWithoutPrice(Deal deal, String field) {
    super(
        Kind.RULE,
        "deal-without-price",
        "The deal's jars have no price singly",
        "The deal is for %d × %s%s, but no line prices one of them, so what is left over could not be charged. Add a line for it."
            .formatted(
                deal.count(),
                deal.container(),
                deal.grade() == null ? "" : " " + deal.grade().code()),
        field);
  }
}
