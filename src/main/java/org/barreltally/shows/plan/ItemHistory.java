package org.barreltally.shows.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The past of one kind of jar, the oldest first, told and weighted for the show to come.
 *
 * @param own the takings at this same show
 */
record ItemHistory(List<PastTaking> all, List<PastTaking> own, ComingShow coming, ShowSize size) {

  static ItemHistory of(List<PastTaking> past, ComingShow coming, ShowSize size) {
    List<PastTaking> all =
        past.stream()
            .filter(PastTaking::tells)
            .sorted(Comparator.comparing(PastTaking::day).thenComparing(PastTaking::show))
            .toList();
    List<PastTaking> own = all.stream().filter(p -> p.show().equals(coming.show())).toList();
    return new ItemHistory(all, own, coming, size);
  }

  List<CensoredCount> counts() {
    return all.stream().map(this::count).toList();
  }

  List<CensoredCount> ownCounts() {
    return own.stream().map(this::count).toList();
  }

  List<CensoredCount> othersCounts() {
    return all.stream().filter(p -> !p.show().equals(coming.show())).map(this::count).toList();
  }

  /** The counts of each show that was visited more than once, each at full weight. */
  List<List<CensoredCount>> repeats() {
    return all.stream().collect(Collectors.groupingBy(PastTaking::show)).values().stream()
        .filter(times -> times.size() > 1)
        .map(times -> times.stream().map(p -> count(p, 1)).toList())
        .toList();
  }

  /** Pieces sold per unit of exposure, sold out or not; 0 where nothing was. */
  double plainRate() {
    return all.stream().mapToDouble(PastTaking::sold).sum()
        / Math.max(1e-9, all.stream().mapToDouble(size::of).sum());
  }

  private CensoredCount count(PastTaking past) {
    return count(past, Likeness.of(past, coming, size));
  }

  private CensoredCount count(PastTaking past, double weight) {
    return new CensoredCount(past.sold(), past.soldOut(), size.of(past), weight);
  }
}
