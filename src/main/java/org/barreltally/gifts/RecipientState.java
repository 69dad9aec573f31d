package org.barreltally.gifts;

import java.util.Locale;

/** Where a recipient's boxes are on their way. */
public enum RecipientState {
  CONFIRMED,
  PICKED,
  PACKED,
  SENT,
  DELIVERED,
  RETURNED,
  CANCELLED;

  /** {@code confirmed, picked, packed, sent, delivered, returned, cancelled}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The state with this code, which the database guarantees to exist. */
  public static RecipientState of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }

  /** Whether nothing more is to be done. */
  public boolean resolved() {
    return this == DELIVERED || this == CANCELLED;
  }
}
