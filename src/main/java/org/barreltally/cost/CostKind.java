package org.barreltally.cost;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What money was spent on. */
public enum CostKind {
  FUEL,
  FILTER_AID,
  MEMBRANE,
  LABOUR,
  FEE,
  SYRUP,
  JAR,
  CAP,
  LABEL,
  CARTON,
  OTHER;

  private static final Set<CostKind> PACKING = EnumSet.of(JAR, CAP, LABEL, CARTON, OTHER);

  /** Whether it can be the price of a part of a packed jar. */
  public boolean isOfPacking() {
    return PACKING.contains(this);
  }

  /** For example {@code filter-aid}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind with this code, which the database guarantees to exist. */
  public static CostKind of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
