package org.barreltally.keeping;

import java.time.Instant;
import java.util.List;

/**
 * A backup that was written whole and read again.
 *
 * @param name of the file
 * @param madeAt the moment as which the book stands in it
 * @param bytes of the file
 * @param sha256 of the file, in hexadecimal digits
 * @param applicationVersion the tool that made it
 * @param schemaVersion the version of its tables
 * @param rows of all tables
 * @param tables every table with its rows
 */
public record Backup(
    String name,
    Instant madeAt,
    long bytes,
    String sha256,
    String applicationVersion,
    String schemaVersion,
    long rows,
    List<Rows> tables) {

  /** A table and how many rows of it are in the backup. */
  public record Rows(String table, long rows) {}

  static Backup of(String name, long bytes, String sha256, Manifest manifest) {
    return new Backup(
        name,
        manifest.madeAt(),
        bytes,
        sha256,
        manifest.applicationVersion(),
        manifest.schemaVersion(),
        manifest.rows(),
        manifest.tables().stream().map(t -> new Rows(t.name(), t.rows())).toList());
  }
}
