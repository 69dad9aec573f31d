package org.barreltally.keeping;

import java.util.List;
import org.barreltally.refusal.Refusal;

/** There is a book already where a backup should be restored. */
public final class InstallationNotEmpty extends Refusal {

  private static final int TABLES_NAMED = 5;

  /** What was found, for example {@code lots: 7 rows}. */
  public InstallationNotEmpty(List<String> found) {
    super(
        Kind.CONFLICT,
        "installation-not-empty",
        "There is a book already",
        "A backup goes into an empty installation only, and this one holds %s%s. Choose a new folder with BARRELTALLY_DATA, or an empty database."
            .formatted(
                String.join(", ", found.subList(0, Math.min(TABLES_NAMED, found.size()))),
                found.size() > TABLES_NAMED ? ", …" : ""));
  }
}
