package org.barreltally.ledger;

import java.time.Instant;
import java.time.ZoneId;

/**
 * In which time zone the farm lives. Implemented where settings are known. The zone is asked for by
 * instant, so that a zone set later does not move what happened earlier to another day or year.
 */
public interface FarmZone {

  /** The zone that holds at an instant. */
  ZoneId zoneAt(Instant instant);
}
