package org.barreltally.start;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;

/**
 * PostgreSQL's programs, unpacked from the class path into the data folder. The folder's name holds
 * the archive's length and checksum, so a newer application unpacks its own beside the old one.
 */
final class ServerBinaries {

  private static final String PREFIX = "server-";
  private static final int EXECUTABLE = 0111;

  private final Path home;
  private final Platform platform;

  private ServerBinaries(Path home, Platform platform) {
    this.home = home;
    this.platform = platform;
  }

  /**
   * Unpacks the programs unless they are there already. A folder with the final name is whole: it
   * is unpacked under another name first.
   */
  static ServerBinaries unpackedIn(DataFolder folder, Platform platform) throws IOException {
    Path home = folder.root().resolve(PREFIX + fingerprint(platform));
    if (!Files.isDirectory(home)) {
      Path partial = folder.root().resolve(PREFIX + "partial");
      DataFolder.delete(partial);
      Files.createDirectory(partial);
      unpack(platform, partial);
      Files.move(partial, home, StandardCopyOption.ATOMIC_MOVE);
    }
    return new ServerBinaries(home, platform);
  }

  /** Removes programs of earlier versions; call when no server of theirs runs. */
  void removeOthers() throws IOException {
    List<Path> others;
    try (Stream<Path> beside = Files.list(home.getParent())) {
      others =
          beside
              .filter(p -> p.getFileName().toString().startsWith(PREFIX) && !p.equals(home))
              .toList();
    }
    for (Path other : others) {
      DataFolder.delete(other);
    }
  }

  /** The path of a program: postgres, initdb or pg_ctl. */
  String program(String name) {
    return home.resolve("bin").resolve(platform.program(name)).toString();
  }

  /**
   * The major version of these programs.
   *
   * @throws CannotStart when they do not run on this system
   */
  int majorVersion() {
    String said;
    try {
      said =
          Command.run(home, List.of(program("postgres"), "--version"), Duration.ofMinutes(1))
              .output();
    } catch (IOException e) {
      said = "";
    }
    Matcher version = Pattern.compile("\\(PostgreSQL\\) (\\d+)").matcher(said);
    if (!version.find()) {
      throw new CannotStart(
          "The embedded PostgreSQL does not run on this system (%s %s); name an outside one with BARRELTALLY_DB_URL, _USER and _PASSWORD."
              .formatted(platform.system(), platform.processor()));
    }
    return Integer.parseInt(version.group(1));
  }

  private static InputStream open(Platform platform) {
    InputStream archive =
        ServerBinaries.class.getClassLoader().getResourceAsStream(platform.archive());
    if (archive == null) {
      throw new CannotStart(
          "This build carries no PostgreSQL for %s %s; name an outside one with BARRELTALLY_DB_URL, _USER and _PASSWORD."
              .formatted(platform.system(), platform.processor()));
    }
    return archive;
  }

  /**
   * Tells archives of versions apart, not forged ones: it is worked out at every start, before
   * anything is compiled.
   */
  private static String fingerprint(Platform platform) throws IOException {
    CRC32 checksum = new CRC32();
    try (InputStream archive = new CheckedInputStream(open(platform), checksum)) {
      long bytes = archive.transferTo(OutputStream.nullOutputStream());
      return "%d-%08x".formatted(bytes, checksum.getValue());
    }
  }

  private static void unpack(Platform platform, Path target) throws IOException {
    try (InputStream archive = new BufferedInputStream(open(platform));
        TarArchiveInputStream tar =
            new TarArchiveInputStream(new XZCompressorInputStream(archive))) {
      for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
        Path path = target.resolve(entry.getName()).normalize();
        if (!path.startsWith(target)) {
          throw new IOException("archive entry outside its folder: " + entry.getName());
        }
        unpack(entry, tar, path);
      }
    }
  }

  private static void unpack(TarArchiveEntry entry, InputStream content, Path path)
      throws IOException {
    if (entry.isDirectory()) {
      Files.createDirectories(path);
      return;
    }
    Files.createDirectories(path.getParent());
    if (entry.isSymbolicLink()) {
      Files.createSymbolicLink(path, Path.of(entry.getLinkName()));
      return;
    }
    Files.copy(content, path);
    if ((entry.getMode() & EXECUTABLE) != 0) {
      makeExecutable(path);
    }
  }

  private static void makeExecutable(Path path) throws IOException {
    if (path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Set<PosixFilePermission> permissions = EnumSet.copyOf(Files.getPosixFilePermissions(path));
      permissions.add(PosixFilePermission.OWNER_EXECUTE);
      permissions.add(PosixFilePermission.GROUP_EXECUTE);
      permissions.add(PosixFilePermission.OTHERS_EXECUTE);
      Files.setPosixFilePermissions(path, permissions);
    }
  }
}
