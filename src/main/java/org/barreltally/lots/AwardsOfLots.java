package org.barreltally.lots;

import java.util.List;

/**
 * Tells which awards a lot has won. Implemented where awards are recorded, because lots do not know
 * shows.
 */
public interface AwardsOfLots {

  /** The awards of a lot, the newest first. */
  List<LotAward> of(String lot);
}
