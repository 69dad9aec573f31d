package org.barreltally.canning;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Bundle;

/**
 * Uses up what a run needs besides syrup: jars, caps, labels, cartons. Canning does not know how
 * they are kept; whoever keeps them implements this and is called inside the run's transaction.
 */
public interface UsesSupplies {

  /**
   * Jars of one size that a run filled, in the order of its fills.
   *
   * @param pieces good and broken
   */
  record Jars(String container, int pieces) {}

  /** What one run uses, looked up. */
  interface Use {

    /**
     * Uses it up.
     *
     * @param movement of the run; when it is taken back, the supplies come back
     * @param write is given the rows, to be run after the movement's
     * @return cautions for the sheet
     * @throws org.barreltally.refusal.Refusal if there is too little and the owner wants it refused
     */
    List<String> use(UUID movement, Bundle write);
  }

  /**
   * Looks up what the jars take and keeps it from others until the transaction ends.
   *
   * @param ask is given the questions; send it before the supplies are used
   */
  Use begin(LocalDate on, List<Jars> jars, Bundle ask);

  /** What {@link Use#use} would say, refusals included, as cautions; nothing is used. */
  List<String> lookAt(LocalDate on, List<Jars> jars);
}
