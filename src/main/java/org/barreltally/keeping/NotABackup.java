package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** The file is something else than a backup of this tool. */
public final class NotABackup extends Refusal {

  public NotABackup(String file, String found) {
    super(
        Kind.RULE,
        "not-a-backup",
        "Not a backup",
        "%s is not a backup of Barreltally: %s. Choose the file that a backup made."
            .formatted(shown(file), found));
  }
}
