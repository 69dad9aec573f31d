package org.barreltally.sugarbush;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** How a number of taps was come by, and which of the two a lease goes by. */
public enum TapKind {
  /** Counted in the trees. */
  SET,
  /** Agreed with the landowner, whatever was set. */
  AGREED;

  /** {@code set, agreed}. */
  @JsonValue
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The kind with that code.
   *
   * @throws IllegalArgumentException if there is none
   */
  @JsonCreator
  public static TapKind of(String code) {
    for (TapKind kind : values()) {
      if (kind.code().equals(code)) {
        return kind;
      }
    }
    throw new IllegalArgumentException(code);
  }
}
