package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import org.barreltally.barrels.internal.VesselRow;
import org.barreltally.ledger.Days;

/** Empties and washes a vessel: what was in it before is no parent of what comes next. */
@ApplicationScoped
public class Washing {

  private final Vessels vessels;
  private final Emptying emptying;
  private final Days days;

  public Washing(Vessels vessels, Emptying emptying, Days days) {
    this.vessels = vessels;
    this.emptying = emptying;
    this.days = days;
  }

  /**
   * @param discardReason why syrup still in it is thrown away; null when it is empty
   * @throws BarrelNotEmpty if syrup is in it and no reason is given
   */
  @Transactional
  public Barrel wash(String tag, LocalDate on, String discardReason) {
    days.happened(on, "on");
    VesselRow vessel = vessels.locked(tag).orElseThrow(() -> new UnknownVessel(tag));
    Barrel last = vessels.contents(tag).orElseThrow(() -> new UnknownVessel(tag));
    if (last.state() != BarrelState.DRAINED) {
      if (discardReason == null || discardReason.isBlank()) {
        throw new BarrelNotEmpty(tag, last.lot().code(), "discard");
      }
      emptying.takeOut(tag, on, null, Emptying.Cause.DISCARDED, discardReason);
    }
    vessel.wash();
    return vessels.contents(tag).orElseThrow();
  }
}
