package org.barreltally.keeping.internal;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Set;

/**
 * A file that is there whole or not at all: written beside under another name, forced to the disk,
 * and then renamed. Closed before that, nothing is left of it.
 */
public final class WholeFile implements AutoCloseable {

  /** How the name of an unfinished file ends. */
  static final String PARTIAL = ".partial";

  private static final int BUFFER_BYTES = 1 << 17;

  private final Path target;
  private final Path partial;
  private final FileChannel channel;
  private final MessageDigest digest = Csv.sha256();
  private final OutputStream stream;

  private WholeFile(Path target, Path partial, FileChannel channel) {
    this.target = target;
    this.partial = partial;
    this.channel = channel;
    this.stream =
        new DigestOutputStream(
            new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER_BYTES), digest);
  }

  /**
   * Begins a file that only its owner may read, in a folder that is made if needed.
   *
   * @throws IOException if it is there already or cannot be written
   */
  public static WholeFile begin(Path target) throws IOException {
    if (Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Path folder = target.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, attributes(folder, "rwx------"));
    }
    Path partial = target.resolveSibling(target.getFileName() + PARTIAL);
    FileChannel channel =
        FileChannel.open(
            partial,
            EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
            attributes(folder, "rw-------"));
    return new WholeFile(target, partial, channel);
  }

  private static FileAttribute<?>[] attributes(Path path, String permissions) {
    return posix(path)
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0]; // Windows: the folder's access list holds
  }

  private static boolean posix(Path path) {
    Set<String> views = path.getFileSystem().supportedFileAttributeViews();
    return views.contains("posix");
  }

  /** Where the content goes. */
  public OutputStream stream() {
    return stream;
  }

  /** The file as long as it is not kept. */
  public Path partial() {
    return partial;
  }

  /** Forces everything to the disk and gives its SHA-256, in hexadecimal digits. */
  public String finish() throws IOException {
    stream.flush();
    channel.force(true);
    channel.close();
    return HexFormat.of().formatHex(digest.digest());
  }

  /** Gives the file its name. */
  public void keep() throws IOException {
    if (Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Files.move(partial, target, StandardCopyOption.ATOMIC_MOVE);
    force(target.toAbsolutePath().getParent());
  }

  /** On Linux a name is on the disk once its folder is; other systems do not open folders. */
  private static void force(Path folder) {
    try (FileChannel opened = FileChannel.open(folder, StandardOpenOption.READ)) {
      opened.force(true);
    } catch (IOException e) {
      return;
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
    Files.deleteIfExists(partial);
  }

  /** Why the system said no, in a few words. */
  public static String reason(IOException e) {
    if (e instanceof FileAlreadyExistsException) {
      return "there is a file of this name already";
    }
    if (e instanceof AccessDeniedException) {
      return "this user may not write in its folder";
    }
    if (e instanceof NoSuchFileException) {
      return "its folder is not there";
    }
    if (e instanceof FileSystemException fault) {
      return fault.getReason() == null ? "its folder is none" : fault.getReason();
    }
    return String.valueOf(e.getMessage());
  }
}
