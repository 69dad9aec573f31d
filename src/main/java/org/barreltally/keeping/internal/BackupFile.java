package org.barreltally.keeping.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.barreltally.keeping.BackupDamaged;
import org.barreltally.keeping.BackupStrange;
import org.barreltally.keeping.Manifest;
import org.barreltally.keeping.NotABackup;

/** A backup opened for reading. What it says of itself is checked before anything is unpacked. */
public final class BackupFile implements AutoCloseable {

  /** Java says so of a name that is no UTF-8, whenever it comes upon it. */
  private static final String BROKEN_NAME = "a name in the zip file is broken";

  private final ZipFile zip;
  private final Manifest manifest;

  private BackupFile(ZipFile zip, Manifest manifest) {
    this.zip = zip;
    this.manifest = manifest;
  }

  /**
   * Opens a file and reads its manifest.
   *
   * @throws org.barreltally.refusal.Refusal if it is no backup, damaged, too new, or unreasonable
   * @throws IOException if the system does not let it be read
   */
  public static BackupFile open(Path path) throws IOException {
    String name = String.valueOf(path.getFileName());
    if (!Files.isRegularFile(path)) {
      throw new NotABackup(name, "there is no such file");
    }
    if (!Files.isReadable(path)) {
      throw new IOException(path + " cannot be read by this user");
    }
    ZipFile zip = zip(path, name);
    try {
      BackupLimits.entries(zip.size());
      BackupFile file = new BackupFile(zip, manifest(zip, name));
      file.refuseOthers();
      BackupLimits.unpacked(file.manifest.tables(), Files.size(path));
      return file;
    } catch (IllegalArgumentException e) {
      zip.close();
      throw new BackupDamaged(BROKEN_NAME);
    } catch (RuntimeException | IOException e) {
      zip.close();
      throw e;
    }
  }

  private static ZipFile zip(Path path, String name) throws IOException {
    byte[] head;
    try (InputStream in = Files.newInputStream(path)) {
      head = in.readNBytes(2);
    }
    if (head.length < 2 || head[0] != 'P' || head[1] != 'K') {
      throw new NotABackup(name, "it is no zip file");
    }
    try {
      return new ZipFile(path.toFile());
    } catch (IllegalArgumentException e) {
      throw new BackupDamaged(BROKEN_NAME);
    } catch (IOException e) {
      throw new BackupDamaged("the zip file is broken or was cut short");
    }
  }

  private static Manifest manifest(ZipFile zip, String name) {
    ZipEntry entry = zip.getEntry(Manifest.ENTRY);
    if (entry == null) {
      throw new NotABackup(name, "it has no " + Manifest.ENTRY);
    }
    byte[] text;
    try (InputStream in = zip.getInputStream(entry)) {
      text = in.readNBytes(BackupLimits.MANIFEST_BYTES_MAX + 1);
    } catch (IOException e) {
      throw new BackupDamaged("its manifest cannot be unpacked");
    }
    BackupLimits.manifest(text.length);
    CRC32 sum = new CRC32();
    sum.update(text);
    if (sum.getValue() != entry.getCrc()) {
      throw new BackupDamaged("its manifest does not fit its checksum");
    }
    return ManifestJson.read(name, text);
  }

  /** Every table has its file, and there is no other. */
  private void refuseOthers() {
    Set<String> expected = new HashSet<>();
    expected.add(Manifest.ENTRY);
    for (Manifest.Table table : manifest.tables()) {
      expected.add(table.entry());
      if (zip.getEntry(table.entry()) == null) {
        throw new BackupDamaged("the table " + table.name() + " is missing");
      }
    }
    Set<String> seen = new HashSet<>();
    Enumeration<? extends ZipEntry> entries = zip.entries();
    while (entries.hasMoreElements()) {
      String name = entries.nextElement().getName();
      if (!expected.contains(name) || !seen.add(name)) {
        throw new BackupStrange("a file " + (name.length() > 60 ? "of a long name" : name));
      }
    }
  }

  /** What the file says of itself. */
  public Manifest manifest() {
    return manifest;
  }

  /**
   * Reads every table to its end and compares.
   *
   * @throws BackupDamaged if a table is not what the manifest says
   */
  public void verify() {
    for (Manifest.Table table : manifest.tables()) {
      Csv.Sum sum;
      try (InputStream in = csv(table)) {
        sum = Csv.read(in, table.bytes());
      } catch (IOException e) {
        throw new BackupDamaged("the table " + table.name() + " cannot be unpacked");
      }
      if (sum.bytes() != table.bytes() || !sum.sha256().equals(table.sha256())) {
        throw new BackupDamaged("the table " + table.name() + " does not fit its checksum");
      }
      if (sum.rows() != table.rows()) {
        throw new BackupDamaged(
            "the table %s has %d rows where %d were written"
                .formatted(table.name(), sum.rows(), table.rows()));
      }
    }
  }

  /** A table's CSV. */
  InputStream csv(Manifest.Table table) throws IOException {
    return zip.getInputStream(zip.getEntry(table.entry()));
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
