package org.barreltally.supplies;

import java.time.LocalDate;

/** What the owner wants when a run needs more supplies than the book has. */
public interface SuppliesRule {

  /** Whether such a run on that day is refused; otherwise it is stored with a caution. */
  boolean refuses(LocalDate on);
}
