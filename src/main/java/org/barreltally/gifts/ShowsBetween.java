package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.barreltally.ledger.Days;
import org.barreltally.shows.Booth;
import org.barreltally.shows.Promises;
import org.barreltally.shows.Show;
import org.barreltally.shows.Shows;
import org.barreltally.shows.plan.PlanQuestion;
import org.barreltally.shows.plan.Planning;
import org.barreltally.shows.plan.ShowPlan;

/**
 * Jars that shows booked in between will want and that are not promised to them yet: what the plan
 * of each show would take, less what was promised to it. A show without tables has no plan.
 */
@ApplicationScoped
class ShowsBetween {

  private static final int SHOWS_MAX = 50;
  private static final PlanQuestion AS_BOOKED =
      new PlanQuestion(null, null, null, null, null, null, null, null, null, null);

  private final Shows shows;
  private final Planning planning;
  private final Promises promises;
  private final Days days;

  ShowsBetween(Shows shows, Planning planning, Promises promises, Days days) {
    this.shows = shows;
    this.planning = planning;
    this.promises = promises;
    this.days = days;
  }

  /** Pieces wanted by shows, by the day on which they begin; none packed out already. */
  Map<LocalDate, Map<Jar, Long>> until(LocalDate day) {
    Map<LocalDate, Map<Jar, Long>> wanted = new HashMap<>();
    for (Show show : shows.endingFrom(days.today(), SHOWS_MAX)) {
      if (!show.starts().isAfter(day) && show.state().awaitsPackOut()) {
        Map<Jar, Long> of = wanted.computeIfAbsent(show.starts(), d -> new HashMap<>());
        wantedBy(show).forEach((jar, pieces) -> of.merge(jar, pieces, Long::sum));
      }
    }
    return wanted;
  }

  private Map<Jar, Long> wantedBy(Show show) {
    Map<Jar, Long> wanted = new HashMap<>();
    Booth booth = show.booking().booth();
    if (booth == null || booth.tables().isEmpty()) {
      return wanted;
    }
    for (ShowPlan.Line line : planning.plan(show.id(), AS_BOOKED).items()) {
      wanted.merge(new Jar(line.container(), line.grade()), line.take(), Long::sum);
    }
    promises
        .of(show.id())
        .forEach(
            promise ->
                promise
                    .open()
                    .forEach(
                        line ->
                            wanted.computeIfPresent(
                                new Jar(line.container(), line.grade()),
                                (jar, pieces) -> Math.max(0, pieces - line.count()))));
    return wanted;
  }
}
