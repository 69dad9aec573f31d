package org.barreltally.keeping.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder of backups. Each has beside it a file {@code .sha256} with its checksum, as the program
 * sha256sum writes and checks it; only what has one counts, for it is written last.
 */
public final class BackupFolder {

  private static final Pattern NAME = Pattern.compile("barreltally-([0-9]{8}T[0-9]{9})Z\\.zip");
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmssSSS", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final String SUM = ".sha256";
  private static final Pattern SUM_LINE = Pattern.compile("([0-9a-f]{64})  \\S+\\R?");
  private static final int SUM_BYTES_MAX = 200;

  private final Path folder;

  /** A folder that need not be there yet. */
  public BackupFolder(Path folder) {
    this.folder = folder;
  }

  /** The name of a backup made at an instant; names sort by time. */
  public static String name(Instant madeAt) {
    return "barreltally-" + STAMP.format(madeAt) + "Z.zip";
  }

  /** When a backup of this name was made, one of {@link #names}. */
  public static Instant madeAt(String name) {
    return stamp(name).orElseThrow(() -> new IllegalArgumentException(name));
  }

  /** The instant in a name; empty if it is no backup's. */
  private static Optional<Instant> stamp(String name) {
    Matcher form = NAME.matcher(name);
    try {
      return form.matches()
          ? Optional.of(STAMP.parse(form.group(1), Instant::from))
          : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** The names of what is here whole, the newest first. */
  public List<String> names() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> found = Files.list(folder)) {
      return found
          .map(path -> path.getFileName().toString())
          .filter(name -> stamp(name).isPresent() && Files.isRegularFile(sum(name)))
          .sorted(Comparator.reverseOrder())
          .toList();
    }
  }

  /** The file of a backup; empty unless the name has a backup's form and it is here whole. */
  public Optional<Path> file(String name) {
    return Optional.of(name)
        .filter(text -> stamp(text).isPresent())
        .filter(text -> Files.isRegularFile(sum(text)))
        .map(this::path)
        .filter(Files::isRegularFile);
  }

  /** The checksum that stands beside a backup. */
  public String sha256(String name) throws IOException {
    try (InputStream in = Files.newInputStream(sum(name))) {
      Matcher line =
          SUM_LINE.matcher(new String(in.readNBytes(SUM_BYTES_MAX), StandardCharsets.US_ASCII));
      if (!line.matches()) {
        throw new IOException(sum(name) + " holds no checksum");
      }
      return line.group(1);
    }
  }

  /** Where a backup of this name goes. */
  public Path path(String name) {
    return folder.resolve(name);
  }

  private Path sum(String name) {
    return folder.resolve(name + SUM);
  }

  /** Writes the checksum beside a backup, from when on it counts; if it cannot, both go. */
  public void confirm(String name, String sha256) throws IOException {
    try (WholeFile file = WholeFile.begin(sum(name))) {
      file.stream().write((sha256 + "  " + name + "\n").getBytes(StandardCharsets.US_ASCII));
      file.finish();
      file.keep();
    } catch (IOException e) {
      Files.deleteIfExists(path(name));
      throw e;
    }
  }

  /**
   * Copies a backup of another folder into this one. This one must be there: where a stick is not
   * plugged in, a new folder would lie on the wrong disk.
   *
   * @throws IOException if it cannot be written, or is not the same when read from the other folder
   */
  public void copy(BackupFolder from, String name) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    String sha256 = from.sha256(name);
    try (WholeFile file = WholeFile.begin(path(name))) {
      Files.copy(from.path(name), file.stream());
      if (!file.finish().equals(sha256)) {
        throw new IOException(name + " does not fit its checksum");
      }
      file.keep();
    }
    confirm(name, sha256);
  }

  /** Removes all but the newest, and what a killed program left unfinished long ago. */
  public void keepNewest(int count, Instant unfinishedBefore) throws IOException {
    for (String old : names().stream().skip(count).toList()) {
      Files.deleteIfExists(sum(old));
      Files.deleteIfExists(path(old));
    }
    List<Path> unfinished;
    try (Stream<Path> found = Files.list(folder)) {
      unfinished =
          found
              .filter(p -> p.getFileName().toString().matches("barreltally-.*\\.partial"))
              .toList();
    }
    for (Path left : unfinished) {
      if (Files.getLastModifiedTime(left).toInstant().isBefore(unfinishedBefore)) {
        Files.deleteIfExists(left);
      }
    }
  }
}
