package org.barreltally.keeping.internal;

import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import org.barreltally.keeping.KeepingSettings;
import org.barreltally.keeping.OwnedDatabase;
import org.barreltally.keeping.Saving;

/**
 * What is saved, and where it goes.
 *
 * @param saving reads the book
 * @param folder where its backups lie
 * @param secondPlace where a copy of each lies; empty where none is set
 * @param making held while one is made
 */
public record BackupPlaces(
    Saving saving, BackupFolder folder, Optional<BackupFolder> secondPlace, ReentrantLock making) {

  /** Of one book. */
  public static BackupPlaces of(OwnedDatabase database, KeepingSettings settings) {
    return new BackupPlaces(
        new Saving(database),
        new BackupFolder(settings.folder()),
        settings.secondPlace().map(BackupFolder::new),
        new ReentrantLock());
  }
}
