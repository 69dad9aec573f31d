package org.barreltally.watch;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.measure.Unit;
import org.barreltally.watch.internal.TemperatureRows;

/** Looks for storerooms that were warmer lately than the owner's line. */
@ApplicationScoped
class StoreroomsLook implements Look {

  private static final String WARMTH =
      "Warm syrup darkens sooner, and barrels in a hot shed sweat inside and can mould (Ohio State"
          + " University Extension).";

  private final TemperatureRows rows;
  private final WatchLimits limits;
  private final Days days;

  StoreroomsLook(TemperatureRows rows, WatchLimits limits, Days days) {
    this.rows = rows;
    this.limits = limits;
    this.days = days;
  }

  @Override
  public List<WatchItem> items(LocalDate today) {
    return rows.hottest(days.beginning(today.minusDays(limits.warmDays()))).stream()
        .filter(t -> t.temperature().in(Unit.DEGC).compareTo(line()) > 0)
        .map(this::item)
        .toList();
  }

  private BigDecimal line() {
    return limits.storeroomMax().in(Unit.DEGC);
  }

  private WatchItem item(StoreroomTemperature hottest) {
    LocalDate on = days.dateOf(hottest.at());
    return WatchItem.ofPlace(
        hottest.place(),
        on,
        "%s stood at %s on %s; your line is %s. Air it, shade it, or carry the syrup to a cooler room."
            .formatted(hottest.place(), hottest.temperature(), on, limits.storeroomMax()),
        WARMTH);
  }
}
