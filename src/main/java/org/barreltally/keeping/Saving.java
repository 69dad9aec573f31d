package org.barreltally.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.barreltally.keeping.internal.BackupFile;
import org.barreltally.keeping.internal.BackupWriter;
import org.barreltally.keeping.internal.WholeFile;

/** Writes the book into a file, while others write in the book, and reads the file again. */
public final class Saving {

  private final OwnedDatabase database;

  /** Of the book in this database. */
  public Saving(OwnedDatabase database) {
    this.database = database;
  }

  /**
   * Writes a backup: the whole file or none, readable by its owner only, on the disk when this
   * returns.
   *
   * @param target a file that is not there yet
   * @param now what the backup says of when it was made
   * @throws BackupNotWritten if the system does not let it be written
   * @throws SQLException if the database fails
   */
  public Backup save(Path target, Instant now) throws SQLException {
    try (WholeFile file = WholeFile.begin(target)) {
      Manifest manifest;
      try (Connection connection = database.owner().getConnection()) {
        manifest =
            new BackupWriter(database.schema(), Manifest.ABOUT, ApplicationVersion.text())
                .write(connection, now.truncatedTo(ChronoUnit.MILLIS), file.stream());
      }
      String sha256 = file.finish();
      try (BackupFile written = BackupFile.open(file.partial())) {
        written.verify();
      }
      long bytes = Files.size(file.partial());
      file.keep();
      return Backup.of(String.valueOf(target.getFileName()), bytes, sha256, manifest);
    } catch (IOException e) {
      throw new BackupNotWritten(WholeFile.reason(e));
    }
  }
}
