package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * The one database server of a test run, made by the same launcher as in production, in a temporary
 * folder that goes with the run. Its login is kept in system properties, because tests are loaded
 * by several class loaders and static fields would make one server each. Into the databases of
 * {@code EmptyDatabase} it lets everybody on this machine without a password: proving that one is
 * known is most of what a connection takes, and those tests make thousands.
 */
final class TestServer {

  private static final String URL = "barreltally.test.database.url";
  private static final String PASSWORD = "barreltally.test.database.password";

  private static final String DOORS =
      """
      host /^kept_ all 127.0.0.1/32 trust
      host all all 127.0.0.1/32 scram-sha-256
      """;

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
      UnpackedServer.into(path);
      DataFolder folder = DataFolder.open(path);
      EmbeddedServer server = new EmbeddedServer(folder);
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(server, folder)));
      DatabaseLogin owner = server.start();
      openDoors(owner);
      return owner;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (SQLException e) {
      throw new IllegalStateException("the test server takes no setting", e);
    }
  }

  /** As the server's administrator, who shares the first password. */
  private static void openDoors(DatabaseLogin owner) throws SQLException, IOException {
    String url = owner.jdbcUrl().replaceFirst("[^/]*$", "postgres");
    try (Connection connection = DriverManager.getConnection(url, "postgres", owner.password());
        Statement statement = connection.createStatement();
        ResultSet shown = statement.executeQuery("SHOW hba_file")) {
      shown.next();
      Files.writeString(Path.of(shown.getString(1)), DOORS);
      statement.execute("SELECT pg_reload_conf()");
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
