package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the first start of the built program in a run of tests leaves to the later ones: its classes
 * as the Java machine had made them ready, and PostgreSQL's programs unpacked.
 */
final class ReadyMade {

  private static final Path CLASSES = Path.of("target/classes-of-a-start.jsa").toAbsolutePath();
  private static final Path HALF_CLASSES = Path.of(CLASSES + ".half");
  private static final String MAKE_CLASSES = "-XX:ArchiveClassesAtExit=" + HALF_CLASSES;
  private static final Path SERVER = Path.of("target/unpacked-server").toAbsolutePath();
  private static final String SERVER_PREFIX = "server-";

  private static boolean classesBeingMade;

  private ReadyMade() {}

  /** What the Java machine is told, so that it takes the classes ready-made or makes them so. */
  static synchronized List<String> classes(Path jar) throws IOException {
    if (Files.exists(CLASSES)
        && Files.getLastModifiedTime(CLASSES).compareTo(Files.getLastModifiedTime(jar)) > 0) {
      return List.of("-XX:SharedArchiveFile=" + CLASSES);
    }
    if (classesBeingMade) {
      return List.of();
    }
    classesBeingMade = true;
    Files.deleteIfExists(CLASSES);
    return List.of(MAKE_CLASSES, "-Xlog:cds*=off");
  }

  /** Gives the classes to other starts once the one that makes them has ended, not half written. */
  static void keepClassesOf(Process process, List<String> command) {
    if (command.contains(MAKE_CLASSES)) {
      process.onExit().thenRun(ReadyMade::keepClasses);
    }
  }

  private static synchronized void keepClasses() {
    try {
      if (Files.exists(HALF_CLASSES)) {
        Files.move(HALF_CLASSES, CLASSES, StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts PostgreSQL's programs into a data folder that has none, if a start left them. */
  static synchronized void serverInto(Path data) throws IOException {
    Optional<Path> kept = serverIn(SERVER);
    if (kept.isEmpty() || serverIn(data).isPresent()) {
      return;
    }
    Files.createDirectories(data);
    copy(kept.get(), data.resolve(kept.get().getFileName()));
  }

  /** Keeps the programs that a start unpacked. */
  static synchronized void keepServerOf(Path data) throws IOException {
    Optional<Path> unpacked = serverIn(data);
    if (unpacked.isPresent() && serverIn(SERVER).isEmpty()) {
      Files.createDirectories(SERVER);
      copy(unpacked.get(), SERVER.resolve(unpacked.get().getFileName()));
    }
  }

  private static Optional<Path> serverIn(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.filter(p -> p.getFileName().toString().startsWith(SERVER_PREFIX)).findAny();
    }
  }

  /** Under another name until all is there. */
  private static void copy(Path from, Path to) throws IOException {
    Path half = to.resolveSibling("half-" + to.getFileName());
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : (Iterable<Path>) all::iterator) {
        Files.copy(
            each,
            half.resolve(from.relativize(each).toString()),
            StandardCopyOption.COPY_ATTRIBUTES,
            LinkOption.NOFOLLOW_LINKS);
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    Files.move(half, to, StandardCopyOption.ATOMIC_MOVE);
  }
}
