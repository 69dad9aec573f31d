package org.barreltally.reconciliation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.reconciliation.flows.FlowNetwork;
import org.barreltally.reconciliation.flows.NetworkTooLarge;
import org.barreltally.reconciliation.flows.Reconciler;
import org.barreltally.reconciliation.internal.BookFlows;
import org.barreltally.reconciliation.internal.Period;
import org.barreltally.reconciliation.internal.PlanForYears;
import org.barreltally.settings.FarmSettings;

/** Reconciles a season's weighings, readings and counts with each other. */
@ApplicationScoped
public class SeasonFlows {

  private final BookFlows book;
  private final FarmSettings settings;
  private final Days days;
  private final Instance<ProductionSums> productions;
  private final PlanForYears plan;

  SeasonFlows(
      BookFlows book,
      FarmSettings settings,
      Days days,
      Instance<ProductionSums> productions,
      PlanForYears plan) {
    this.book = book;
    this.plan = plan;
    this.settings = settings;
    this.days = days;
    this.productions = productions;
  }

  /**
   * The movements booked in a year.
   *
   * @throws NetworkTooLarge if they are between more places and barrels than are reckoned at once
   */
  @Transactional(dontRollbackOn = NetworkTooLarge.class)
  public SeasonReconciled of(int season) {
    return of(season, FlowNetwork.MOST);
  }

  /**
   * The movements booked in a year, if that is quickly reckoned.
   *
   * @param most flows; the time grows with the third power of their number
   * @throws NetworkTooLarge if there are more
   */
  @Transactional(dontRollbackOn = NetworkTooLarge.class)
  public SeasonReconciled of(int season, int most) {
    plan.begin();
    // What cannot be weighed is not gathered first: that takes longest where there is most of it.
    mustNotExceed(most, "runs", book.runs(season));
    Period period =
        new Period(
            season,
            days.beginning(LocalDate.of(season, 1, 1)),
            days.beginning(LocalDate.of(season + 1, 1, 1)));
    List<BookFlows.Moved> moved = plan.byHash(() -> book.moved(period));
    NodeNames names = new NodeNames(book.tags(), book.places(), book.made(season), moved);
    List<Production> made = new ArrayList<>();
    productions.forEach(each -> made.addAll(each.of(season)));
    SeasonFacts facts =
        new SeasonFacts(
            moved,
            book.stands(period),
            book.readings(period),
            book.sold(season),
            List.copyOf(made),
            names);
    NetworkDraft draft = new NetworkDraft(names);
    Widths widths = new Widths(settings.instruments());
    new NetworkBuilder(draft, widths, facts).build();
    new StandingFlows(draft, widths, facts).add();
    SeasonNetwork network = draft.network(season);
    mustNotExceed(most, "flows", network == null ? 0 : network.network().flows().size());
    return new SeasonReconciled(
        season, network, network == null ? null : Reconciler.reconcile(network.network()));
  }

  private static void mustNotExceed(int most, String what, int count) {
    if (count > most) {
      throw new NetworkTooLarge(what, count);
    }
  }
}
