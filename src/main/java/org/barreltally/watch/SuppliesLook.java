package org.barreltally.watch;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.supplies.Supplies;
import org.barreltally.supplies.Supply;
import org.barreltally.supplies.SupplyStanding;

/** Looks for supplies at or under their low line, or below zero in the book. */
@ApplicationScoped
class SuppliesLook implements Look {

  private final Supplies supplies;

  SuppliesLook(Supplies supplies) {
    this.supplies = supplies;
  }

  @Override
  public List<WatchItem> items(LocalDate today) {
    return supplies.list(null, Integer.MAX_VALUE).stream()
        .filter(s -> s.low() || s.state() == SupplyStanding.State.COUNT_NEEDED)
        .map(s -> WatchItem.ofSupply(s.supply().code(), reason(s)))
        .toList();
  }

  private static String reason(SupplyStanding standing) {
    Supply supply = standing.supply();
    return standing.onHand() < 0
        ? "%s (%s): runs used %d more than the book had. Count them."
            .formatted(supply.name(), supply.code(), -standing.onHand())
        : "%s (%s): %d on hand, the low line is %d. Order more."
            .formatted(supply.name(), supply.code(), standing.onHand(), supply.lowLine());
  }
}
