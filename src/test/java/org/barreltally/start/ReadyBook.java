package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private static final String SERVER_PREFIX = "server-";

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

  /** Puts PostgreSQL's programs alone into a data folder, for a start that makes all else. */
  static synchronized void serverInto(Path data) throws IOException {
    if (!isOfThisBuild(EMPTY)) {
      makeEmpty();
    }
    Path server = serverIn(EMPTY).orElseThrow();
    if (serverIn(data).isEmpty()) {
      Files.createDirectories(data);
      link(server, data.resolve(server.getFileName()));
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

  private static Optional<Path> serverIn(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.filter(p -> p.getFileName().toString().startsWith(SERVER_PREFIX)).findAny();
    }
  }

  private static void copyInto(Path book, Path data) throws IOException {
    Files.createDirectories(data);
    List<Path> parts;
    try (Stream<Path> inside = Files.list(book)) {
      parts = inside.toList();
    }
    for (Path part : parts) {
      if (part.getFileName().toString().startsWith(SERVER_PREFIX)) {
        link(part, data.resolve(part.getFileName()));
      } else {
        copy(part, data.resolve(part.getFileName()));
      }
    }
  }

  private interface OneFile {
    void put(Path from, Path to) throws IOException;
  }

  private static void copy(Path from, Path to) throws IOException {
    all(from, to, ReadyBook::same);
  }

  /** Copies one file, or a folder without what is in it, with its owner and rights. */
  private static void same(Path from, Path to) throws IOException {
    Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
  }

  /** Programs are only read: one file in many folders, where the folders are of one disk. */
  private static void link(Path from, Path to) throws IOException {
    boolean oneDisk =
        Files.getFileStore(from).equals(Files.getFileStore(to.toAbsolutePath().getParent()));
    if (oneDisk) {
      all(from, to, (file, link) -> Files.createLink(link, file));
    } else {
      copy(from, to);
    }
  }

  /** Makes the folders of a tree anew and puts every file of it there, in one way or another. */
  private static void all(Path from, Path to, OneFile each) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : (Iterable<Path>) all::iterator) {
        Path there = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
          same(path, there);
        } else {
          each.put(path, there);
        }
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
