package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** A later version of the tool made the file, in a form that this one does not know. */
public final class BackupTooNew extends Refusal {

  public BackupTooNew(String what, String its, String ours) {
    super(
        Kind.RULE,
        "backup-too-new",
        "The backup is newer than the tool",
        "The backup was made by a later version: its %s is %s, and this version knows %s at most. Restore it with that version or a newer one."
            .formatted(what, shown(its), ours));
  }
}
