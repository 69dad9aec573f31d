package org.barreltally.gifts;

import org.barreltally.refusal.Refusal;

/** A file of recipients cannot be read as comma-separated values at all. */
public final class BrokenRecipientFile extends Refusal {
  public BrokenRecipientFile(String why) {
    super(Kind.INVALID, "broken-csv", "The file cannot be read", why, "file");
  }
}
