package org.barreltally.reconciliation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import org.barreltally.lots.Lots;
import org.barreltally.reconciliation.internal.BookSums;
import org.barreltally.reconciliation.internal.PlanForYears;

/** Balances of a year, for all lots or one. */
@ApplicationScoped
public class Balances {

  private final BookSums sums;
  private final Lots lots;
  private final PlanForYears plan;

  Balances(BookSums sums, Lots lots, PlanForYears plan) {
    this.sums = sums;
    this.lots = lots;
    this.plan = plan;
  }

  /**
   * The balance of the movements booked in a year.
   *
   * @param lot null for all
   * @throws org.barreltally.lots.UnknownLot if there is no such lot
   */
  @Transactional
  public Balance of(int season, String lot) {
    if (lot != null) {
      lots.named(lot, "lot");
    }
    plan.begin();
    return Balance.of(
        season,
        lot,
        sums.standing(lot),
        sums.booked(season, lot),
        sums.later(season, lot),
        sums.unexplainedU(season, lot));
  }
}
