package org.barreltally.start;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.lots.BushesOfSeason;
import org.barreltally.sugarbush.boiling.GatheredBushes;

/** Lots learn of the sugarhouse's log where their sap came from. */
@ApplicationScoped
class LoggedBushes implements BushesOfSeason {

  private final GatheredBushes bushes;

  LoggedBushes(GatheredBushes bushes) {
    this.bushes = bushes;
  }

  @Override
  public List<String> gathered(int season, LocalDate until) {
    return bushes.by(season, until);
  }
}
