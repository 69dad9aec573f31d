package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A PostgreSQL server from Debian's packages, in a folder of its own, alone or as a standby. */
final class DebianServer implements AutoCloseable {

  private static final String OWNER = "barreltally";
  private static final String PASSWORD = "made up for the standby";

  private final Path programs;
  private final Path data;
  private final int port;

  private DebianServer(Path programs, Path data, int port) {
    this.programs = programs;
    this.data = data;
    this.port = port;
  }

  /** Where Debian keeps the newest server's programs; empty where it is not installed. */
  static Optional<Path> programs() throws IOException {
    Path versions = Path.of("/usr/lib/postgresql");
    if (!Files.isDirectory(versions)) {
      return Optional.empty();
    }
    try (Stream<Path> found = Files.list(versions)) {
      return found
          .filter(version -> Files.exists(version.resolve("bin/pg_basebackup")))
          .filter(version -> Files.exists(version.resolve("bin/initdb")))
          .max(Comparator.comparing(version -> Integer.valueOf(version.getFileName().toString())))
          .map(version -> version.resolve("bin"));
    }
  }

  /** A new server that others may follow, with an empty database for a book and its owner. */
  static DebianServer primary(Path programs, Path folder) throws Exception {
    DebianServer server = new DebianServer(programs, openTo(folder), Program.freePort());
    Path secret =
        Files.writeString(server.data.resolveSibling(folder.getFileName() + "-secret"), PASSWORD);
    Files.setPosixFilePermissions(secret, PosixFilePermissions.fromString("rw-r--r--"));
    server.run(
        "initdb",
        "-D",
        server.data,
        "-U",
        "postgres",
        "-A",
        "scram-sha-256",
        "--pwfile=" + secret,
        "-E",
        "UTF8",
        "--no-locale");
    server.begin();
    server.sql("CREATE ROLE " + OWNER + " LOGIN CREATEROLE PASSWORD '" + PASSWORD + "'");
    server.sql("CREATE DATABASE barreltally OWNER " + OWNER);
    return server;
  }

  /** A server that follows another one and answers who reads. */
  static DebianServer following(DebianServer primary, Path folder) throws Exception {
    DebianServer server = new DebianServer(primary.programs, openTo(folder), Program.freePort());
    server.run(
        "pg_basebackup",
        "-D",
        server.data,
        "-R",
        "--checkpoint=fast",
        "-X",
        "stream",
        "-d",
        "host=127.0.0.1 port=%d user=postgres password='%s'".formatted(primary.port, PASSWORD));
    server.begin();
    return server;
  }

  private void begin() throws Exception {
    run(
        "pg_ctl",
        "-D",
        data,
        "-w",
        "-t",
        "120",
        "-l",
        data.resolve("log"),
        "-o",
        "-p %d -c listen_addresses=127.0.0.1 -c unix_socket_directories='' -c fsync=off"
            .formatted(port),
        "start");
  }

  /** Ends it as when its machine goes away. */
  void fall() throws Exception {
    run("pg_ctl", "-D", data, "-m", "immediate", "-w", "stop");
  }

  /** A standby becomes a server that writes. */
  void promote() throws Exception {
    run("pg_ctl", "-D", data, "-w", "promote");
  }

  DatabaseLogin owner() {
    return new DatabaseLogin(
        "jdbc:postgresql://127.0.0.1:%d/barreltally".formatted(port),
        "barreltally",
        OWNER,
        PASSWORD);
  }

  /** The settings of a copy of the program on this server. */
  Map<String, String> settings() {
    return Map.of(
        "BARRELTALLY_DB_URL", owner().jdbcUrl(),
        "BARRELTALLY_DB_USER", OWNER,
        "BARRELTALLY_DB_PASSWORD", PASSWORD);
  }

  /** Waits until all that another server has written by now is here as well. */
  void awaitAll(DebianServer primary) throws SQLException {
    String written = primary.sql("SELECT pg_current_wal_flush_lsn()");
    Program.await(
        () -> {
          try {
            return "t".equals(sql("SELECT pg_last_wal_replay_lsn() >= '" + written + "'"));
          } catch (SQLException e) {
            throw new IllegalStateException(e);
          }
        });
  }

  private String sql(String text) throws SQLException {
    DatabaseLogin administrator =
        new DatabaseLogin(
            "jdbc:postgresql://127.0.0.1:%d/postgres".formatted(port),
            "postgres",
            "postgres",
            PASSWORD);
    return FolderDatabase.sql(administrator, text);
  }

  /** A folder that the account of the server owns and can reach. */
  private static Path openTo(Path folder) throws Exception {
    Files.setPosixFilePermissions(folder.getParent(), PosixFilePermissions.fromString("rwxr-xr-x"));
    Files.createDirectory(folder);
    if (isRoot()) {
      done(List.of("chown", "nobody", folder.toString()));
    }
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
    return folder;
  }

  private static boolean isRoot() {
    return new com.sun.security.auth.module.UnixSystem().getUid() == 0;
  }

  private void run(String program, Object... arguments) throws Exception {
    List<String> command = new ArrayList<>();
    if (isRoot()) {
      command.addAll(List.of("setpriv", "--reuid=nobody", "--regid=65534", "--clear-groups"));
    }
    command.add(programs.resolve(program).toString());
    Stream.of(arguments).map(Object::toString).forEach(command::add);
    done(command);
  }

  private static void done(List<String> command) throws Exception {
    Path said = Files.createTempFile("barreltally", ".out");
    ProcessBuilder builder = new ProcessBuilder(command).directory(Path.of("/").toFile());
    builder.environment().put("LC_ALL", "C");
    int exit = builder.redirectErrorStream(true).redirectOutput(said.toFile()).start().waitFor();
    String text = Files.readString(said);
    Files.delete(said);
    assertEquals(0, exit, () -> command + " said " + text);
  }

  @Override
  public void close() throws Exception {
    if (Files.exists(data.resolve("postmaster.pid"))) {
      run("pg_ctl", "-D", data, "-m", "fast", "-w", "stop");
    }
    if (isRoot()) {
      done(List.of("chown", "-R", "root", data.toString()));
    }
  }
}
