package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** No backup of this name lies in the folder. */
public final class UnknownBackup extends Refusal {

  public UnknownBackup(String name) {
    super(
        Kind.NOT_FOUND,
        "unknown-backup",
        "No such backup",
        "There is no backup " + shown(name) + "; GET /api/backups lists those there are.");
  }
}
