package org.barreltally.settings.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;
import org.barreltally.web.pages.PageFarm;

/** The farm's day, clock and money, as pages ask for them. */
@ApplicationScoped
class FarmOfPages implements PageFarm {

  private final Days days;
  private final FarmSettings settings;

  FarmOfPages(Days days, FarmSettings settings) {
    this.days = days;
    this.settings = settings;
  }

  @Override
  public LocalDate today() {
    return days.today();
  }

  @Override
  public ZoneId zone(Instant at) {
    return settings.zoneAt(at);
  }

  @Override
  public String currency() {
    return settings.now().said().currency();
  }
}
