package org.barreltally.gifts;

import java.util.Locale;

/** What is done with an order or a recipient of it. */
public enum Step {
  RESERVE,
  RELEASE,
  PICK,
  PACK,
  SEND,
  DELIVER,
  RETURN,
  INSPECT,
  REPLACE,
  CANCEL,
  UNDO;

  /** {@code reserve, release, pick, …}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The step with this code, which the database guarantees to exist. */
  public static Step of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }
}
