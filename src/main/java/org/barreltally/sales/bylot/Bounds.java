package org.barreltally.sales.bylot;

/** At least and at most so many pieces. */
public record Bounds(long least, long most) {

  public Bounds {
    if (least > most) {
      throw new IllegalArgumentException("at least " + least + " and at most " + most);
    }
  }

  public static Bounds exactly(long pieces) {
    return new Bounds(pieces, pieces);
  }

  public boolean isExact() {
    return least == most;
  }

  /** The narrowest bounds that hold whichever of the two is true. */
  public Bounds or(Bounds other) {
    return new Bounds(Math.min(least, other.least), Math.max(most, other.most));
  }

  public Bounds plus(Bounds other) {
    return new Bounds(least + other.least, most + other.most);
  }
}
