package org.barreltally.stock;

import org.barreltally.refusal.Refusal;

/** A file cannot be read as comma-separated values at all. */
public final class BrokenCsv extends Refusal {
  public BrokenCsv(String why) {
    super(Kind.INVALID, "broken-csv", "The file cannot be read", why);
  }
}
