package org.barreltally.web.pages;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** What pages ask of the farm. The settings give it. */
public interface PageFarm {

  /** The farm's date now. */
  LocalDate today();

  /** The zone that the farm's clocks showed at an instant. */
  ZoneId zone(Instant at);

  /** The money of amounts typed without a currency: code of ISO 4217. */
  String currency();
}
