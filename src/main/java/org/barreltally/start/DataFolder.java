package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder that holds everything the embedded database keeps. While it is open no second start
 * can open it; the system frees the lock when the process ends, however it ends.
 *
 * <pre>
 * lock                 held while the application runs
 * database-password    random, for the owner of this computer's account only
 * server-…             PostgreSQL's programs, unpacked
 * database             PostgreSQL's data
 * database.log         what PostgreSQL had to say
 * tls                  certificates of the tool's own making, and their keys
 * backups              copies of the whole book, unless another folder is set for them
 * </pre>
 */
public final class DataFolder implements AutoCloseable {

  private final Path root;
  private final FileChannel channel;

  private DataFolder(Path root, FileChannel channel) {
    this.root = root;
    this.channel = channel;
  }

  /**
   * Makes the folder if needed and takes its lock.
   *
   * @throws CannotStart when it is in use or cannot be written
   */
  public static DataFolder open(Path path) {
    return openUnlessInUse(path)
        .orElseThrow(
            () ->
                new CannotStart(
                    "The data folder %s is in use by another running Barreltally; stop that one or choose another folder with BARRELTALLY_DATA."
                        .formatted(path)));
  }

  /**
   * Makes the folder if needed and takes its lock; empty when a running program has it.
   *
   * @throws CannotStart when it cannot be written
   */
  static Optional<DataFolder> openUnlessInUse(Path path) {
    try {
      Files.createDirectories(path);
      Path root = path.toRealPath();
      FileChannel channel =
          FileChannel.open(
              root.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      return locked(root, channel);
    } catch (AccessDeniedException e) {
      throw new CannotStart(
          "The data folder %s cannot be written by this user; choose another with BARRELTALLY_DATA or change its owner."
              .formatted(path),
          e);
    } catch (FileSystemException e) {
      throw new CannotStart(
          "The data folder %s cannot be used (%s); choose another with BARRELTALLY_DATA."
              .formatted(path, reason(e)),
          e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<DataFolder> locked(Path root, FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return Optional.of(new DataFolder(root, channel));
      }
    } catch (OverlappingFileLockException e) {
      // held by this very process: the same answer
    }
    channel.close();
    return Optional.empty();
  }

  private static String reason(FileSystemException e) {
    return e.getReason() == null ? "it is not a folder" : e.getReason();
  }

  /** The folder itself, without symbolic links. */
  public Path root() {
    return root;
  }

  Path passwordFile() {
    return root.resolve("database-password");
  }

  Path database() {
    return root.resolve("database");
  }

  Path log() {
    return root.resolve("database.log");
  }

  /** Deletes a file or folder with all it holds; nothing there is fine. */
  static void delete(Path path) throws IOException {
    if (!Files.exists(path, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    List<Path> found;
    try (Stream<Path> tree = Files.walk(path)) {
      found = tree.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path each : found) {
      Files.deleteIfExists(each);
    }
  }

  /** Gives the lock back. */
  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
