package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * What the first start of the built program in a run of tests leaves to the later ones: its classes
 * as the Java machine had made them ready.
 */
final class ReadyMade {

  private static final Path CLASSES = Path.of("target/classes-of-a-start.jsa").toAbsolutePath();
  private static final Path HALF_CLASSES = Path.of(CLASSES + ".half");
  private static final String MAKE_CLASSES = "-XX:ArchiveClassesAtExit=" + HALF_CLASSES;

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
}
