package org.barreltally.barrels;

import java.util.Arrays;
import java.util.Locale;

/** How far a filling is used up. */
public enum BarrelState {
  /** Nothing was drawn yet. */
  FULL,
  /** Some was drawn. */
  OPENED,
  /** Nothing is left; the tag may be filled again. */
  DRAINED;

  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static BarrelState of(String code) {
    return Arrays.stream(values()).filter(s -> s.code().equals(code)).findFirst().orElseThrow();
  }
}
