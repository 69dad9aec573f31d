package org.barreltally.keeping;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.barreltally.keeping.internal.BackupFile;
import org.barreltally.keeping.internal.RestoringPlace;
import org.barreltally.ledger.InvariantQuestions;
import org.barreltally.ledger.Invariants;

/**
 * Puts a backup into an empty installation. The tables are made and filled beside it, brought up to
 * this version and asked whether they add up, and only then, in one transaction, take its place:
 * whatever goes wrong before leaves the installation as it was.
 */
public final class Restoring {

  private final OwnedDatabase database;

  /** Into this database, on which nobody works. */
  public Restoring(OwnedDatabase database) {
    this.database = database;
  }

  /**
   * Restores a file.
   *
   * @return what the file said of itself
   * @throws org.barreltally.refusal.Refusal if the file or the installation does not fit; nothing
   *     was changed
   * @throws IOException if the system does not let the file be read
   * @throws SQLException if the database fails; nothing was changed
   */
  public Manifest restore(Path path) throws IOException, SQLException {
    try (BackupFile backup = BackupFile.open(path);
        Connection connection = database.owner().getConnection();
        RestoringPlace place = RestoringPlace.beside(database, connection)) {
      place.mustKnow(backup.manifest().schemaVersion());
      backup.verify();
      place.refuseUnlessEmpty();
      place.fill(backup);
      place.bringUpToDate();
      refuseUnsound(connection, place);
      place.takeOver();
      return backup.manifest();
    }
  }

  /**
   * Reads what a file says of itself, without a database.
   *
   * @throws org.barreltally.refusal.Refusal if it is no backup, too new or unreasonable, or its
   *     manifest is damaged
   * @throws IOException if the system does not let the file be read
   */
  public static Manifest look(Path path) throws IOException {
    try (BackupFile backup = BackupFile.open(path)) {
      return backup.manifest();
    }
  }

  /**
   * Reads a file to its end and compares it with what it says of itself, without a database.
   *
   * @throws org.barreltally.refusal.Refusal as {@link #look}, and if a table is damaged
   * @throws IOException if the system does not let the file be read
   */
  public static Manifest verified(Path path) throws IOException {
    try (BackupFile backup = BackupFile.open(path)) {
      backup.verify();
      return backup.manifest();
    }
  }

  private static void refuseUnsound(Connection connection, RestoringPlace place)
      throws SQLException {
    place.makeCurrent();
    List<String> broken =
        InvariantQuestions.ask(connection).stream()
            .filter(finding -> !finding.violations().isEmpty())
            .map(Invariants.Finding::name)
            .toList();
    if (!broken.isEmpty()) {
      throw new BookNotSound(broken);
    }
  }
}
