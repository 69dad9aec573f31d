package org.barreltally.stock;

import java.util.Locale;

/** What became of jars that are written off. */
public enum Cause {
  BROKEN,
  SAMPLED,
  DISCARDED,
  GIVEN,
  UNEXPLAINED;

  /** The stable name, which is also the code of the place outside that they go to. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
