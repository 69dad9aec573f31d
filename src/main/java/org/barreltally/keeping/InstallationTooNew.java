package org.barreltally.keeping;

import org.barreltally.refusal.Refusal;

/** A later version of the tool made the tables into whose place a backup should be restored. */
public final class InstallationTooNew extends Refusal {

  public InstallationTooNew(String its) {
    super(
        Kind.CONFLICT,
        "installation-too-new",
        "The installation is newer than the tool",
        "A later version of Barreltally made this installation (its tables are of version %s). Restore with that version, or into a new folder or database."
            .formatted(shown(its)));
  }
}
