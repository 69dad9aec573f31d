package org.barreltally.keeping.internal;

import java.util.List;
import org.barreltally.keeping.BackupUnreasonable;
import org.barreltally.keeping.Manifest;

/**
 * What a backup may come to. Rows hold random identities, so that CSV of a real book shrinks to a
 * third or a tenth; a file that promises two hundred times its size is made to fill a disk.
 */
final class BackupLimits {

  static final int MANIFEST_BYTES_MAX = 1_000_000;
  private static final int ENTRIES_MAX = 1_000;
  private static final long UNPACKED_BYTES_MAX = 100L << 30;
  private static final long RATIO_MAX = 200;
  private static final long RATIO_FROM_BYTES = 10L << 20;

  private BackupLimits() {}

  static void entries(int count) {
    if (count > ENTRIES_MAX) {
      throw new BackupUnreasonable("it holds %d files, more than %d".formatted(count, ENTRIES_MAX));
    }
  }

  static void manifest(int bytes) {
    if (bytes > MANIFEST_BYTES_MAX) {
      throw new BackupUnreasonable("its manifest is over %d bytes".formatted(MANIFEST_BYTES_MAX));
    }
  }

  /** Judges the sizes that the manifest names; no more than those are ever read. */
  static void unpacked(List<Manifest.Table> tables, long fileBytes) {
    long unpacked = 0;
    for (Manifest.Table table : tables) {
      if (table.bytes() > UNPACKED_BYTES_MAX) {
        throw tooLarge();
      }
      unpacked += table.bytes();
    }
    if (unpacked > UNPACKED_BYTES_MAX) {
      throw tooLarge();
    }
    if (unpacked > RATIO_FROM_BYTES && unpacked / RATIO_MAX > fileBytes) {
      throw new BackupUnreasonable(
          "it would unpack to more than %d times its size".formatted(RATIO_MAX));
    }
  }

  private static BackupUnreasonable tooLarge() {
    return new BackupUnreasonable(
        "it would unpack to more than %d GiB".formatted(UNPACKED_BYTES_MAX >> 30));
  }
}
