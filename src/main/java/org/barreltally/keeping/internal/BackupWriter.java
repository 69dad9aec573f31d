package org.barreltally.keeping.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.barreltally.keeping.Manifest;

/**
 * Writes the whole book as one zip file. All tables are read in one REPEATABLE READ transaction, so
 * they stand as at one moment, and nobody who writes meanwhile waits or is waited for.
 */
public final class BackupWriter {

  private final String schema;
  private final String about;
  private final String applicationVersion;

  /** Of the tables in a schema, by a version of the tool; {@code about} goes into the manifest. */
  public BackupWriter(String schema, String about, String applicationVersion) {
    this.schema = schema;
    this.about = about;
    this.applicationVersion = applicationVersion;
  }

  /**
   * Writes the file's content.
   *
   * @param connection of the owner; its transaction is ended
   */
  public Manifest write(Connection connection, Instant madeAt, OutputStream target)
      throws SQLException, IOException {
    connection.setAutoCommit(false);
    connection.setReadOnly(true);
    connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
    try {
      SameText.in(connection);
      ZipOutputStream zip = new ZipOutputStream(target);
      List<Manifest.Table> tables = new ArrayList<>();
      for (BookTable table : Catalog.tables(connection, schema).values()) {
        if (!Manifest.LEFT_OUT.contains(table.name())) {
          tables.add(write(connection, table, madeAt, zip));
        }
      }
      Manifest manifest = manifest(connection, madeAt, tables);
      begin(Manifest.ENTRY, madeAt, zip);
      zip.write(ManifestJson.write(manifest));
      zip.closeEntry();
      zip.finish();
      return manifest;
    } finally {
      connection.rollback(); // nothing was changed
    }
  }

  private static Manifest.Table write(
      Connection connection, BookTable table, Instant madeAt, ZipOutputStream zip)
      throws SQLException, IOException {
    begin(new Manifest.Table(table.name(), null, 0, 0, null).entry(), madeAt, zip);
    Csv.Sum sum = Csv.write(connection, table, zip);
    zip.closeEntry();
    return new Manifest.Table(table.name(), table.columns(), sum.rows(), sum.bytes(), sum.sha256());
  }

  private Manifest manifest(Connection connection, Instant madeAt, List<Manifest.Table> tables)
      throws SQLException {
    return new Manifest(
        about,
        Manifest.FORMAT,
        Manifest.FORMAT_VERSION,
        applicationVersion,
        Catalog.schemaVersion(connection, schema)
            .orElseThrow(() -> new SQLException("no migration made the schema " + schema)),
        madeAt,
        tables,
        Manifest.LEFT_OUT,
        Catalog.sequences(connection, schema));
  }

  private static void begin(String name, Instant madeAt, ZipOutputStream zip) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(LocalDateTime.ofInstant(madeAt, ZoneOffset.UTC));
    zip.putNextEntry(entry);
  }
}
