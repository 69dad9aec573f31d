package org.barreltally.measure;

/** What a unit measures. Units of one dimension convert into each other, except sugar scales. */
public enum Dimension {
  MASS,
  VOLUME,
  TEMPERATURE,
  /** Strength of a sugar solution; °Bé and °Bx are tied by {@link Baume}, not by a factor. */
  SUGAR
}
