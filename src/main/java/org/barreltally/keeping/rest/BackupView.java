package org.barreltally.keeping.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.barreltally.keeping.Backup;
import org.barreltally.keeping.Kept;

/**
 * A backup as the interface tells of it.
 *
 * @param bytes the size of the file
 * @param sha256 the checksum of the file, in hexadecimal digits
 * @param rows of all tables
 * @param atSecondPlace whether a copy lies at the second place; left out where none is set
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BackupView(
    String name,
    Instant madeAt,
    long bytes,
    String sha256,
    String applicationVersion,
    String schemaVersion,
    long rows,
    List<Backup.Rows> tables,
    Boolean atSecondPlace) {

  static BackupView of(Kept kept) {
    Backup backup = kept.backup();
    return new BackupView(
        backup.name(),
        backup.madeAt(),
        backup.bytes(),
        backup.sha256(),
        backup.applicationVersion(),
        backup.schemaVersion(),
        backup.rows(),
        backup.tables(),
        kept.atSecondPlace());
  }
}
