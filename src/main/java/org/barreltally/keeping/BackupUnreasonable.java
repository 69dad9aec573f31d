package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** The file would unpack into more than any book of a maker holds. */
public final class BackupUnreasonable extends Refusal {

  public BackupUnreasonable(String found) {
    super(
        Kind.RULE,
        "backup-unreasonable",
        "The backup is too large to be one",
        "The file does not look like a backup: %s. It was not unpacked.".formatted(found));
  }
}
