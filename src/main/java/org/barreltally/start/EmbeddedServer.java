package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.jboss.logging.Logger;
import org.postgresql.PGConnection;

/**
 * The PostgreSQL server that lives and ends with the application, with its data in the data folder.
 * Start and stop may come from different threads; a stop that comes first forbids the start.
 */
public final class EmbeddedServer {

  private static final Logger LOG = Logger.getLogger(EmbeddedServer.class);
  private static final long MILLISECONDS_BETWEEN_LOOKS = 1_000;
  private static final String ADMINISTRATOR = "postgres";
  private static final String OWNER = "barreltally";
  private static final String DATABASE = "barreltally";

  private final DataFolder folder;
  private ServerControl running;
  private boolean stopped;

  /** The server of an open data folder, not started yet. */
  public EmbeddedServer(DataFolder folder) {
    this.folder = folder;
  }

  /**
   * Unpacks the programs and makes the database if this is the first start, ends what a killed run
   * left behind, and starts the server.
   *
   * @return the login of the database's owner
   * @throws CannotStart with the reason, when the database cannot be had
   */
  public synchronized DatabaseLogin start() {
    if (stopped) {
      throw new CannotStart("Stopped before the database was started.");
    }
    try {
      Platform platform = Platform.current();
      ServerBinaries binaries = ServerBinaries.unpackedIn(folder, platform);
      int major = binaries.majorVersion();
      ServerAccount account = ServerAccount.choose(binaries, folder.root(), platform);
      ServerControl control = new ServerControl(folder, binaries, account);
      new OrphanServer(folder).stop(control);
      binaries.removeOthers();
      String password = DatabasePassword.of(folder);
      if (Files.exists(folder.database())) {
        refuseOtherVersion(major);
      } else {
        control.create(ADMINISTRATOR, password);
      }
      running = control;
      int port = control.start();
      watch(port);
      return owner(port, password);
    } catch (IOException e) {
      throw new CannotStart(
          "The data folder %s cannot be used: %s."
              .formatted(folder.root(), DatabaseFault.oneLine(e)),
          e);
    }
  }

  /**
   * Starts the server again, at the same port, when it fell and nobody stopped it: killed for want
   * of memory, or after its disk had been full. What was committed is in its write-ahead log.
   */
  private void watch(int port) {
    Thread watch =
        new Thread(
            () -> {
              while (rest() && !isStopped()) {
                raise(port);
              }
            },
            "database-watch");
    watch.setDaemon(true);
    watch.start();
  }

  private static boolean rest() {
    try {
      Thread.sleep(MILLISECONDS_BETWEEN_LOOKS);
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private synchronized boolean isStopped() {
    return stopped;
  }

  private synchronized void raise(int port) {
    OrphanServer server = new OrphanServer(folder);
    try {
      if (stopped || server.isRunning()) {
        return;
      }
      LOG.warn("The database fell; it is started again.");
      server.stop(running);
      running.start(port);
      LOG.info("The database is there again.");
    } catch (IOException | CannotStart e) {
      LOG.error("The database could not be started again, and is tried once more soon", e);
    }
  }

  private void refuseOtherVersion(int major) throws IOException {
    Path file = folder.database().resolve("PG_VERSION");
    String made = Files.exists(file) ? Files.readString(file).strip() : "another version of";
    if (!made.equals(Integer.toString(major))) {
      throw new CannotStart(
          "The data folder %s was made by PostgreSQL %s, and this build carries PostgreSQL %d; start it with the build that made it, or bring the data over with pg_upgrade."
              .formatted(folder.root(), made, major));
    }
  }

  /** The owner's login; role and database are made if a first start was broken off before them. */
  private DatabaseLogin owner(int port, String password) {
    DatabaseLogin owner = new DatabaseLogin(url(port, DATABASE), DATABASE, OWNER, password);
    try {
      owner.connect().close();
      return owner;
    } catch (SQLException missing) {
      DatabaseLogin administrator =
          new DatabaseLogin(url(port, ADMINISTRATOR), ADMINISTRATOR, ADMINISTRATOR, password);
      try (Connection connection = administrator.connect()) {
        createOwner(connection, password);
        createDatabase(connection);
        return owner;
      } catch (SQLException e) {
        throw new CannotStart(
            DatabaseFault.isLoginRefused(e)
                ? "The file %s does not fit the database beside it; put the right one back from a copy."
                    .formatted(folder.passwordFile())
                : "The database in %s refused: %s"
                    .formatted(folder.root(), DatabaseFault.oneLine(e)),
            e);
      }
    }
  }

  /**
   * The owner's login at the server that a running program started in a data folder.
   *
   * @throws IOException when its notes cannot be read, as in its first moments
   */
  static DatabaseLogin running(Path data) throws IOException {
    // PostgreSQL documentation, Database File Layout: the fourth line of postmaster.pid is the port
    List<String> notes = Files.readAllLines(data.resolve("database").resolve("postmaster.pid"));
    if (notes.size() < 4 || !notes.get(3).strip().matches("[0-9]{1,5}")) {
      throw new IOException("no port in postmaster.pid");
    }
    String password = Files.readString(data.resolve("database-password")).strip();
    return new DatabaseLogin(
        url(Integer.parseInt(notes.get(3).strip()), DATABASE), DATABASE, OWNER, password);
  }

  private static String url(int port, String database) {
    return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
  }

  /** No superuser: what the migrations may do here they may do on an outside server too. */
  private static void createOwner(Connection connection, String password) throws SQLException {
    if (!exists(connection, "SELECT 1 FROM pg_roles WHERE rolname = ?", OWNER)) {
      try (Statement statement = connection.createStatement()) {
        statement.execute("CREATE ROLE " + OWNER + " LOGIN CREATEROLE");
      }
    }
    connection
        .unwrap(PGConnection.class)
        .alterUserPassword(OWNER, password.toCharArray(), "scram-sha-256");
  }

  private static void createDatabase(Connection connection) throws SQLException {
    if (!exists(connection, "SELECT 1 FROM pg_database WHERE datname = ?", DATABASE)) {
      try (Statement statement = connection.createStatement()) {
        statement.execute("CREATE DATABASE " + DATABASE + " OWNER " + OWNER);
      }
    }
  }

  private static boolean exists(Connection connection, String query, String name)
      throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(query)) {
      statement.setString(1, name);
      return statement.executeQuery().next();
    }
  }

  /** Stops the server, if it was started, and waits for its end. May be called more than once. */
  public synchronized void stop() {
    stopped = true;
    if (running == null) {
      return;
    }
    try {
      running.stop();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    running = null;
  }
}
