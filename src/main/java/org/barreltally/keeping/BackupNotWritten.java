package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** The system did not let the file be written. */
public final class BackupNotWritten extends Refusal {

  public BackupNotWritten(String reason) {
    super(
        Kind.CONFLICT,
        "backup-not-written",
        "The backup could not be written",
        "The backup could not be written: %s. Make room or mend the folder, or choose another with BARRELTALLY_BACKUPS; nothing half done was left."
            .formatted(reason));
  }
}
