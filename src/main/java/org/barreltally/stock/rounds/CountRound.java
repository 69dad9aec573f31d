package org.barreltally.stock.rounds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;

/**
 * A counting round of a place.
 *
 * @param sheets in the order they were told: two counters, then the recount where they differed
 * @param end null while it is open
 */
public record CountRound(UUID id, String place, Instant openedAt, List<Sheet> sheets, End end) {

  public CountRound {
    sheets = List.copyOf(sheets);
  }

  /** Jars of one lot and size. */
  public record Jar(String container, String lot) implements Comparable<Jar> {
    @Override
    public int compareTo(Jar other) {
      return (container + "\n" + lot).compareTo(other.container + "\n" + other.lot);
    }
  }

  /**
   * What one counter found.
   *
   * @param nth 1 and 2: the two counters; 3: the recount
   * @param pieces by lot and size
   */
  public record Sheet(int nth, String by, Instant countedAt, Map<Jar, Long> pieces) {
    public Sheet {
      pieces = Map.copyOf(pieces);
    }
  }

  /**
   * How it ended: posted as a count, or given up for a reason.
   *
   * @param count null if it was given up
   * @param reason null if it was posted
   */
  public record End(UUID count, String reason) {}

  /** {@code first, second, recount, agreed, posted, given-up}: what it waits for, or its end. */
  public String state() {
    if (end != null) {
      return end.count() != null ? "posted" : "given-up";
    }
    return switch (sheets.size()) {
      case 0 -> "first";
      case 1 -> "second";
      case 2 -> differing().isEmpty() ? "agreed" : "recount";
      default -> "agreed";
    };
  }

  /**
   * What the two counters do not agree about, by size and lot; jars that only one of them wrote
   * down are among it. Empty while there are not two.
   */
  public List<Jar> differing() {
    if (sheets.size() < 2) {
      return List.of();
    }
    Map<Jar, Long> one = sheets.get(0).pieces();
    Map<Jar, Long> two = sheets.get(1).pieces();
    TreeSet<Jar> all = new TreeSet<>(one.keySet());
    all.addAll(two.keySet());
    List<Jar> differing = new ArrayList<>();
    for (Jar jar : all) {
      if (!Objects.equals(one.get(jar), two.get(jar))) {
        differing.add(jar);
      }
    }
    return differing;
  }

  /** What was found: where the counters agree, and else what the recount says. */
  public Map<Jar, Long> agreed() {
    Map<Jar, Long> found = new LinkedHashMap<>(new TreeMap<>(sheets.get(0).pieces()));
    found.keySet().removeAll(differing());
    if (sheets.size() > 2) {
      found.putAll(sheets.get(2).pieces());
    }
    return found;
  }

  /** When the last sheet was counted. */
  public Instant countedAt() {
    return sheets.get(sheets.size() - 1).countedAt();
  }
}
