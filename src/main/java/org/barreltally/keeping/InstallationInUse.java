package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** Somebody works on the database into which a backup should be restored. */
public final class InstallationInUse extends Refusal {

  public InstallationInUse(String who) {
    super(
        Kind.CONFLICT,
        "installation-in-use",
        "The database is in use",
        "%s is signed in to the database. Stop every running copy of Barreltally on it first; nothing was restored."
            .formatted(who));
  }
}
