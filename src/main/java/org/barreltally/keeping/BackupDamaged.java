package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** The file began as a backup and is no longer, or never was, what it says of itself. */
public final class BackupDamaged extends Refusal {

  public BackupDamaged(String found) {
    super(
        Kind.RULE,
        "backup-damaged",
        "The backup is damaged",
        "The backup is damaged: %s. Take another copy of it, or an earlier one; nothing was restored."
            .formatted(found));
  }
}
