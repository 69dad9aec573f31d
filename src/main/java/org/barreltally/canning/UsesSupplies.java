package org.barreltally.canning;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

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

  /**
   * Uses up what the jars took.
   *
   * @param movement of the run; when it is taken back, the supplies come back
   * @return cautions for the sheet
   * @throws org.barreltally.refusal.Refusal if there is too little and the owner wants it refused
   */
  List<String> use(UUID movement, LocalDate on, List<Jars> jars);

  /** What {@link #use} would say, refusals included, as cautions; nothing is used. */
  List<String> lookAt(LocalDate on, List<Jars> jars);
}
