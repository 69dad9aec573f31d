package org.barreltally.shows.plan;

import java.util.List;
import java.util.Objects;

/**
 * By what demand is measured from show to show: hundreds of visitors where they are known of the
 * show to come and of at least half the past takings, else days. A past show whose visitors nobody
 * said counts with the usual number a day.
 */
final class ShowSize {

  static final double HUNDRED = 100;

  private final boolean byVisitors;
  private final double usualVisitorsADay;

  private ShowSize(boolean byVisitors, double usualVisitorsADay) {
    this.byVisitors = byVisitors;
    this.usualVisitorsADay = usualVisitorsADay;
  }

  static ShowSize of(List<PastTaking> past, ComingShow coming) {
    List<PastTaking> known = past.stream().filter(p -> p.visitors() != null).toList();
    double visitors =
        known.stream().map(PastTaking::visitors).filter(Objects::nonNull).mapToInt(v -> v).sum();
    double days = known.stream().mapToInt(PastTaking::days).sum();
    boolean mostKnown = known.size() * 2 >= past.size();
    return new ShowSize(
        coming.visitors() != null && mostKnown, days > 0 ? Math.max(1, visitors) / days : 1);
  }

  boolean byVisitors() {
    return byVisitors;
  }

  double of(PastTaking past) {
    return size(past.days(), past.visitors());
  }

  double of(ComingShow coming) {
    return size(coming.days(), coming.visitors());
  }

  private double size(int days, Integer visitors) {
    if (!byVisitors) {
      return days;
    }
    return Math.max(1, visitors == null ? usualVisitorsADay * days : visitors) / HUNDRED;
  }
}
