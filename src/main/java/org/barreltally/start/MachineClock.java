package org.barreltally.start;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;

/** The one place where the machine's clock enters. */
class MachineClock {

  @Produces
  @Singleton
  Clock clock() {
    return Clock.systemUTC();
  }
}
