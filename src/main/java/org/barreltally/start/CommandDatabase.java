package org.barreltally.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The database of a command: an outside one, the embedded one of a running program, or the embedded
 * one started for the time of the command.
 */
final class CommandDatabase implements AutoCloseable {

  private final DatabaseLogin owner;
  private final Runnable end;

  private CommandDatabase(DatabaseLogin owner, Runnable end) {
    this.owner = owner;
    this.end = end;
  }

  /**
   * A database that is there, whether the program runs or not.
   *
   * @throws CannotStart when there is none, or it cannot be had
   */
  static CommandDatabase toRead(Settings settings) {
    if (settings.outside().isPresent()) {
      return new CommandDatabase(settings.outside().get(), () -> {});
    }
    if (!Files.isDirectory(settings.data().resolve("database"))) {
      throw new CannotStart(
          "There is no book in %s; name its data folder with BARRELTALLY_DATA."
              .formatted(settings.data()));
    }
    Optional<DataFolder> folder = DataFolder.openUnlessInUse(settings.data());
    return folder.isPresent()
        ? started(folder.get())
        : new CommandDatabase(running(settings.data()), () -> {});
  }

  /**
   * A database nobody uses, made if needed.
   *
   * @throws CannotStart when the program runs on it, or it cannot be had
   */
  static CommandDatabase toFill(Settings settings) {
    return settings
        .outside()
        .map(login -> new CommandDatabase(login, () -> {}))
        .orElseGet(() -> started(DataFolder.open(settings.data())));
  }

  private static CommandDatabase started(DataFolder folder) {
    EmbeddedServer server = new EmbeddedServer(folder);
    Thread stop = new Thread(server::stop, "stop");
    Runtime.getRuntime().addShutdownHook(stop); // for Ctrl-C; a second stop does nothing
    return new CommandDatabase(
        server.start(),
        () -> {
          server.stop();
          folder.close();
        });
  }

  private static DatabaseLogin running(Path data) {
    try {
      return EmbeddedServer.running(data);
    } catch (IOException e) {
      throw new CannotStart(
          "A running Barreltally has the data folder %s, and its database does not answer yet; try again in a moment."
              .formatted(data),
          e);
    }
  }

  /** The login of its owner. */
  DatabaseLogin owner() {
    return owner;
  }

  /** Stops what was started for the command. */
  @Override
  public void close() {
    end.run();
  }
}
