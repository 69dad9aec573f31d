package org.barreltally.ledger;

import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.refusal.Refusal;

/** More was to be promised than can be; nothing was reserved. */
public final class ShortOfStock extends Refusal {

  /** One container and grade of which there is too little, in pieces. */
  public record Shortage(String container, String grade, long wanted, long available) {}

  private final transient List<Shortage> shortages;

  public ShortOfStock(List<Shortage> shortages) {
    super(
        Kind.CONFLICT,
        "short-of-stock",
        "Not enough to promise",
        shortages.stream()
                .map(
                    s ->
                        "%s %s: %d wanted, %d can be promised"
                            .formatted(s.container(), s.grade(), s.wanted(), s.available()))
                .collect(Collectors.joining("; "))
            + ". Nothing was reserved.");
    this.shortages = List.copyOf(shortages);
  }

  public List<Shortage> shortages() {
    return shortages;
  }
}
