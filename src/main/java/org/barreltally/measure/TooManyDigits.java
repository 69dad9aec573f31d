package org.barreltally.measure;

import org.barreltally.refusal.Refusal;

/** A number with more digits than any instrument here gives. */
public final class TooManyDigits extends Refusal {

  /** The most digits in all, and the most on either side of the decimal point. */
  public static final int MOST = 12;

  public TooManyDigits() {
    super(
        Kind.INVALID,
        "too-many-digits",
        "Too many digits",
        "Give at most " + MOST + " significant digits.",
        "value");
  }
}
