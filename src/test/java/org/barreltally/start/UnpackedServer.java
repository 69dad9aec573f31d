package org.barreltally.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;

/** PostgreSQL's programs, unpacked once for all test servers and books of a build. */
final class UnpackedServer {

  private static final Path FOLDER = Path.of("target/postgresql").toAbsolutePath();
  private static final String PREFIX = "server-";

  private UnpackedServer() {}

  /** Puts them into a data folder that has none. */
  static void into(Path data) throws IOException {
    if (programsIn(data).isEmpty()) {
      Files.createDirectories(data);
      Path programs = programs();
      FolderTree.link(programs, data.resolve(programs.getFileName()));
    }
  }

  /** Whether a part of a data folder is the programs. */
  static boolean is(Path part) {
    return part.getFileName().toString().startsWith(PREFIX);
  }

  /** Of two Java machines that come at once, one unpacks them and the other waits. */
  private static Path programs() throws IOException {
    AtomicReference<DataFolder> mine = new AtomicReference<>();
    Program.await(
        () -> {
          DataFolder.openUnlessInUse(FOLDER).ifPresent(mine::set);
          return mine.get() != null;
        });
    try (DataFolder folder = mine.get()) {
      ServerBinaries.unpackedIn(folder, Platform.current()).removeOthers();
    }
    return programsIn(FOLDER).orElseThrow();
  }

  private static Optional<Path> programsIn(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.filter(UnpackedServer::is).findAny();
    }
  }
}
