package org.barreltally.stock;

import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.refusal.Refusal;

/** Jars stand on the shelf but are promised to others; nothing was moved. */
public final class PromisedElsewhere extends Refusal {

  /**
   * One container and grade of which too little is free, in pieces.
   *
   * @param free what nobody was promised, and what the taker itself was
   */
  public record Shortage(String container, String grade, long wanted, long free) {}

  private final transient List<Shortage> shortages;

  public PromisedElsewhere(List<Shortage> shortages) {
    super(
        Kind.CONFLICT,
        "short-of-stock",
        "Promised elsewhere",
        shortages.stream()
                .map(
                    s ->
                        "%s %s: %d wanted, %d not promised to others"
                            .formatted(s.container(), s.grade(), s.wanted(), Math.max(0, s.free())))
                .collect(Collectors.joining("; "))
            + ". Nothing was moved; take fewer, or free a promise.");
    this.shortages = List.copyOf(shortages);
  }

  public List<Shortage> shortages() {
    return shortages;
  }
}
