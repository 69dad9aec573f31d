package org.barreltally.netcontents;

import java.util.Locale;

/** How a test of a check came out. */
public enum Verdict {
  PASS,
  FAIL,
  /** Too many are short to pass and too few to fail: a second sample is needed. */
  SECOND_SAMPLE,
  /** The table for it was not entered yet. */
  NOT_CHECKED;

  /** {@code pass, fail, second-sample, not-checked}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Verdict passIf(boolean passes) {
    return passes ? PASS : FAIL;
  }
}
