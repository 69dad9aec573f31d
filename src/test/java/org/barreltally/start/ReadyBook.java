package org.barreltally.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.barreltally.keeping.Tables;

/**
 * Data folders made once in a run of tests and copied for each program that would make them anew: a
 * book as it is before its first owner comes, one that has an owner, and one in which the invented
 * season was played.
 */
final class ReadyBook {

  private static final Path FOLDER = Path.of("target/ready-made").toAbsolutePath();
  private static final Path EMPTY = FOLDER.resolve("book");
  private static final Path OWNED = FOLDER.resolve("owned");
  private static final Path SEASON = FOLDER.resolve("season");

  private ReadyBook() {}

  /** Puts a book without an owner into a data folder that has none. */
  static synchronized void emptyInto(Path data) throws IOException {
    if (Files.notExists(data.resolve("database"))) {
      if (!isOfThisBuild(EMPTY)) {
        makeEmpty();
      }
      copyInto(EMPTY, data);
    }
  }

  /** Puts an empty book with an owner into a data folder that has none. */
  static synchronized void ownedInto(Path data) throws IOException {
    if (Files.notExists(data.resolve("database"))) {
      if (!isOfThisBuild(OWNED)) {
        makeOwned();
      }
      copyInto(OWNED, data);
    }
  }

  /** Puts a book with the invented season into a data folder that has none. */
  static synchronized void seasonInto(Path data) throws IOException {
    if (Files.notExists(data.resolve("database"))) {
      if (!isOfThisBuild(SEASON)) {
        makeSeason();
      }
      copyInto(SEASON, data);
    }
  }

  /** A program built later may make other tables. */
  private static boolean isOfThisBuild(Path book) throws IOException {
    return Files.exists(book)
        && Files.getLastModifiedTime(book).compareTo(Files.getLastModifiedTime(Program.JAR)) > 0;
  }

  private interface Making {
    void in(DatabaseLogin owner) throws SQLException;
  }

  private static void makeEmpty() throws IOException {
    Path half = begun(EMPTY);
    UnpackedServer.into(half);
    served(
        half,
        owner -> {
          String application = new DatabaseRoles(owner).ensure().user();
          new Tables(owner.owned(application)).bringUpToDate();
        });
    finish(half, EMPTY);
  }

  private static void makeOwned() throws IOException {
    Path half = begun(OWNED);
    emptyInto(half);
    served(half, OwnerRow::addTo);
    finish(half, OWNED);
  }

  private static void served(Path data, Making making) throws IOException {
    try (DataFolder folder = DataFolder.open(data)) {
      EmbeddedServer server = new EmbeddedServer(folder);
      try {
        making.in(server.start());
      } catch (SQLException e) {
        throw new IOException(e);
      } finally {
        server.stop();
      }
    }
  }

  private static void makeSeason() throws IOException {
    Path half = begun(SEASON);
    Map<String, String> settings = new HashMap<>(Program.ownBook(half));
    settings.put("BARRELTALLY_DEMO", "true");
    try (Program program = Program.start(settings).awaitReady()) {
      Program.await(() -> program.output().contains("Shows settled"));
    }
    finish(half, SEASON);
  }

  private static Path begun(Path book) throws IOException {
    Path half = book.resolveSibling(book.getFileName() + ".half");
    DataFolder.delete(half);
    DataFolder.delete(book);
    Files.createDirectories(FOLDER);
    return half;
  }

  private static void finish(Path half, Path book) throws IOException {
    Files.move(half, book, StandardCopyOption.ATOMIC_MOVE);
    Files.setLastModifiedTime(book, FileTime.from(Instant.now()));
  }

  private static void copyInto(Path book, Path data) throws IOException {
    Files.createDirectories(data);
    List<Path> parts;
    try (Stream<Path> inside = Files.list(book)) {
      parts = inside.toList();
    }
    for (Path part : parts) {
      if (UnpackedServer.is(part)) {
        FolderTree.link(part, data.resolve(part.getFileName()));
      } else {
        FolderTree.copy(part, data.resolve(part.getFileName()));
      }
    }
  }
}
