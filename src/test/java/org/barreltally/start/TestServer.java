package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The one database server of a test run, made by the same launcher as in production, in a temporary
 * folder that goes with the run. Its login is kept in system properties, because tests are loaded
 * by several class loaders and static fields would make one server each.
 */
final class TestServer {

  private static final String URL = "barreltally.test.database.url";
  private static final String PASSWORD = "barreltally.test.database.password";

  private TestServer() {}

  /** The login of the database's owner; the first call starts the server. */
  static DatabaseLogin owner() {
    synchronized (System.getProperties()) {
      if (System.getProperty(URL) == null) {
        DatabaseLogin started = start();
        System.setProperty(URL, started.jdbcUrl());
        System.setProperty(PASSWORD, started.password());
      }
    }
    return new DatabaseLogin(
        System.getProperty(URL), "barreltally", "barreltally", System.getProperty(PASSWORD));
  }

  private static DatabaseLogin start() {
    try {
      Path path = Files.createTempDirectory("barreltally-test");
      DataFolder folder = DataFolder.open(path);
      EmbeddedServer server = new EmbeddedServer(folder);
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(server, folder)));
      return server.start();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void remove(EmbeddedServer server, DataFolder folder) {
    server.stop();
    folder.close();
    try {
      DataFolder.delete(folder.root());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
