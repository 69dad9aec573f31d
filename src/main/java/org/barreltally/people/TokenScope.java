package org.barreltally.people;

import java.util.Locale;

/** What a token is good for where it is not good for all that its person may do. */
public enum TokenScope {
  /** What the application of a show table asks, and nothing else. */
  TABLE;

  /** {@code table}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The scope of this code; null for none. The database knows no other codes. */
  public static TokenScope of(String code) {
    return code == null ? null : valueOf(code.toUpperCase(Locale.ROOT));
  }
}
