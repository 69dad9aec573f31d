package org.barreltally.sales;

import org.barreltally.pricing.Money;

/**
 * Money taken in at a place, by its sales that stand.
 *
 * @param cash handed over, change not yet given back
 * @param change given back
 * @param owing what buyers will pay later
 * @param unsaid totals of sales that say nothing of how they were paid
 * @param sales how many
 * @param notAddingUp how many whose payment is not what was due, or of which that is not known
 */
public record Takings(
    Money cash,
    Money change,
    Money card,
    Money owing,
    Money unsaid,
    Money tax,
    long sales,
    long notAddingUp) {

  /** All of it. */
  public Money total() {
    return cash.minus(change).plus(card).plus(owing).plus(unsaid);
  }
}
