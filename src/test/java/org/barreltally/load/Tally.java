package org.barreltally.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What the askers of one kind heard, and how long they waited. */
final class Tally {

  private final List<Long> micros = new ArrayList<>();
  private final Map<Integer, Integer> statuses = new TreeMap<>();
  private final List<String> surprises = new ArrayList<>();

  /**
   * @param wanted whether the answer is one that a well-behaved asker may get
   */
  synchronized void heard(int status, long nanos, boolean wanted, String answer) {
    micros.add(nanos / 1_000);
    statuses.merge(status, 1, Integer::sum);
    if (!wanted && surprises.size() < 20) {
      surprises.add(status + " " + answer.substring(0, Math.min(300, answer.length())));
    }
  }

  synchronized List<String> surprises() {
    return List.copyOf(surprises);
  }

  synchronized int asked() {
    return micros.size();
  }

  @Override
  public synchronized String toString() {
    List<Long> sorted = new ArrayList<>(micros);
    Collections.sort(sorted);
    return "%d asked %s, median %.0f ms, 99 of 100 within %.0f ms, longest %.0f ms"
        .formatted(sorted.size(), statuses, at(sorted, 0.5), at(sorted, 0.99), at(sorted, 1.0));
  }

  private static double at(List<Long> sorted, double part) {
    return sorted.isEmpty()
        ? 0
        : sorted.get((int) Math.min(sorted.size() - 1, part * sorted.size())) / 1_000.0;
  }
}
