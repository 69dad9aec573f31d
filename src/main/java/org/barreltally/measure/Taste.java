package org.barreltally.measure;

import org.barreltally.refusal.InvalidField;

/** What a taster found. Anything but clean is an off-flavour and makes Processing Grade. */
public enum Taste {
  CLEAN,
  BUDDY,
  SOUR,
  METABOLISM,
  SCORCHED,
  OTHER_OFF;

  /** {@code clean, buddy, sour, metabolism, scorched, other-off}. */
  public String code() {
    return Codes.of(this);
  }

  public boolean isOff() {
    return this != CLEAN;
  }

  /**
   * @throws InvalidField when no taste has that code
   */
  public static Taste of(String code) {
    return Codes.find(Taste.class, code, "taste");
  }
}
