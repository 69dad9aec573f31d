package org.barreltally.sugarbush;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** By what a jar counts that a landowner gets: it changes the answer by a factor of two. */
public enum Basis {
  /** By its contents: sixteen half-pints are a gallon. */
  VOLUME,
  /** By its list price: some seven half-pints are a gallon's worth. */
  LIST_VALUE,
  /** By its contents at the price of a gallon, and a charge for the container. */
  VOLUME_PLUS_CONTAINER;

  /** {@code volume, list-value, volume-plus-container}. */
  @JsonValue
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The basis with that code.
   *
   * @throws IllegalArgumentException if there is none
   */
  @JsonCreator
  public static Basis of(String code) {
    for (Basis basis : values()) {
      if (basis.code().equals(code)) {
        return basis;
      }
    }
    throw new IllegalArgumentException(code);
  }
}
