package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** Another backup is being written just now. */
public final class BackupUnderWay extends Refusal {

  public BackupUnderWay() {
    super(
        Kind.CONFLICT,
        "backup-under-way",
        "A backup is being made",
        "Another backup is being written just now. Wait for it; it holds what you recorded before it began.");
  }
}
