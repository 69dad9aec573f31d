package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Costs spread over the goods they belong to.
 *
 * @param added to goods by movement and item
 * @param late costs that came after the year in which their goods did, which that year's goods
 *     bear; below zero where such a cost was taken back
 * @param waiting costs whose goods have not come yet
 */
public record Spread(
    Map<UUID, Map<UUID, List<Contribution>>> added, List<Late> late, List<Spent> waiting) {

  public Spread {
    added = new HashMap<>(added);
    late = List.copyOf(late);
    waiting = List.copyOf(waiting);
  }

  /** A late cost, and the year that bears it. */
  public record Late(Spent cost, int year, BigDecimal value) {}

  /** What costs add to goods that a movement brought. */
  public List<Contribution> to(UUID movement, UUID item) {
    return added.getOrDefault(movement, Map.of()).getOrDefault(item, List.of());
  }
}
