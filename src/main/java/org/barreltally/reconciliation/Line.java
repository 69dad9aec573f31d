package org.barreltally.reconciliation;

/** Into which line of a balance the book's entries fall. */
public enum Line {
  OPENING,
  MADE,
  WATER,
  BOUGHT,
  RETURNED,
  SOLD,
  GIFTS,
  SHARES,
  BULK,
  CONSIGNED_SOLD,
  SAMPLES,
  BROKEN,
  DISCARDED,
  SHRINK,
  UNEXPLAINED,
  /** Between lots: into jars and blends, and what rounding to whole jars leaves. */
  CONVERTED,
  BARRELS,
  CONTAINERS,
  CONSIGNED;

  /** Whether it stands at own places. */
  public boolean stands() {
    return this == BARRELS || this == CONTAINERS || this == CONSIGNED;
  }

  /** Whether syrup comes from there. */
  public boolean comesIn() {
    return this == OPENING || this == MADE || this == WATER || this == BOUGHT || this == RETURNED;
  }
}
