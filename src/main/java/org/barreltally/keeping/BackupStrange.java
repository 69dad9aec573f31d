package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** The file holds something that has no place in a backup of its version. */
public final class BackupStrange extends Refusal {

  public BackupStrange(String found) {
    super(
        Kind.RULE,
        "backup-strange",
        "The backup holds what it should not",
        "The backup holds what no backup of its version does: %s. It was changed or made by something else; nothing was restored."
            .formatted(found));
  }
}
