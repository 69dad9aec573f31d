package org.barreltally.shows.plan;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says in one line why so many of an item are taken, in words a helper reads. */
final class Why {

  private static final int TIMES_SHOWN = 3;

  private Why() {}

  static String of(Forecast forecast, Candidate candidate, long taken, ShowPlan.Limit limit) {
    return "%s; expect about %d (%d to %d). %s%s"
        .formatted(
            evidence(forecast),
            Math.round(forecast.demand().mean()),
            forecast.demand().quantile(0.1),
            forecast.demand().quantile(0.9),
            choice(candidate),
            cut(candidate, taken, limit));
  }

  /** Nothing is known that a number could come from. */
  static String unknown() {
    return "Never at a show, and no visitors expected to guess by: say visitors to get a first"
        + " guess.";
  }

  private static String evidence(Forecast forecast) {
    String elsewhere = elsewhere(forecast.elsewhere());
    if (!forecast.here().isEmpty()) {
      return "Here " + here(forecast.here()) + (elsewhere.isEmpty() ? "" : ", and " + elsewhere);
    }
    if (forecast.elsewhere() > 0) {
      return "Never here; " + elsewhere;
    }
    return switch (forecast.guess()) {
      case OWNER -> "Never at a show; your first guess by the visitors expected";
      case SHARED -> "No shows to learn from; a first guess by the visitors expected";
      case OTHER_KINDS -> "Never at a show; guessed from what other jars sold";
    };
  }

  private static String here(List<PastTaking> here) {
    String times =
        here.subList(Math.max(0, here.size() - TIMES_SHOWN), here.size()).stream()
            .map(Why::once)
            .collect(Collectors.joining(", "));
    int earlier = here.size() - TIMES_SHOWN;
    return earlier > 0 ? times + " (" + earlier + " earlier)" : times;
  }

  private static String once(PastTaking past) {
    return past.soldOut()
        ? "all %d sold in %d".formatted(past.sold(), past.day().getYear())
        : "%d of %d sold in %d".formatted(past.sold(), past.taken(), past.day().getYear());
  }

  private static String elsewhere(int shows) {
    return shows == 0 ? "" : shows == 1 ? "1 other show" : shows + " other shows";
  }

  private static String choice(Candidate candidate) {
    double times = candidate.costs().underage() / candidate.costs().overage();
    String ratio =
        times >= 9.5 ? Long.toString(Math.round(times)) : String.format(Locale.ROOT, "%.1f", times);
    return "One too few costs %s times one carted back, so %d".formatted(ratio, candidate.wanted());
  }

  private static String cut(Candidate candidate, long taken, ShowPlan.Limit limit) {
    return switch (limit) {
      case DEMAND -> ".";
      case PROMISE -> " would be right, but only %d can be promised.".formatted(taken);
      case VEHICLE ->
          " would be right, but %d for the weight the vehicle should carry.".formatted(taken);
      case TABLE ->
          candidate.inFacing() == 0
              ? " would be right, but it fits on no tier of the tables."
              : " would be right, but %d for the room on the tables.".formatted(taken);
    };
  }
}
