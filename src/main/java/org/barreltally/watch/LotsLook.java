package org.barreltally.watch;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.settings.FarmSettings;
import org.barreltally.watch.internal.StandingLots;

/** Looks at every lot of which something stands at own places. */
@ApplicationScoped
class LotsLook implements Look {

  private final StandingLots lots;
  private final FarmSettings settings;
  private final WatchLimits limits;

  LotsLook(StandingLots lots, FarmSettings settings, WatchLimits limits) {
    this.lots = lots;
    this.settings = settings;
    this.limits = limits;
  }

  @Override
  public List<WatchItem> items(LocalDate today) {
    LotRules rules =
        new LotRules(
            settings.jurisdiction(),
            settings.instruments().halfWidth(InstrumentKind.COLOR_METER),
            limits.ageDays(),
            limits.heldDays());
    return lots.all().stream().flatMap(lot -> rules.of(lot, today).stream()).toList();
  }
}
