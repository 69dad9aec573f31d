package org.barreltally.start;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;

/** PostgreSQL's own programs for making, starting and stopping a database, on any system alike. */
final class ServerControl {

  private static final Duration START_LIMIT = Duration.ofMinutes(10); // recovery may take a while
  private static final Duration STOP_LIMIT = Duration.ofMinutes(1);
  private static final int TRIES = 3;
  private static final long LOG_BYTES_MAX = 5_000_000;

  private final DataFolder folder;
  private final ServerBinaries binaries;
  private final ServerAccount account;

  ServerControl(DataFolder folder, ServerBinaries binaries, ServerAccount account) {
    this.folder = folder;
    this.binaries = binaries;
    this.account = account;
  }

  /**
   * Makes an empty database under another name and renames it when it is whole. Text sorts by code
   * point on every system alike; passwords are kept as SCRAM verifiers.
   *
   * @param administrator the name of the role that may do everything
   */
  void create(String administrator, String password) throws IOException {
    Path partial = folder.root().resolve("database.partial");
    Path secret = folder.root().resolve("database-password.initial");
    DataFolder.delete(partial);
    Files.createDirectory(partial);
    account.own(partial);
    DatabasePassword.write(secret, password);
    account.own(secret);
    try {
      Command.Outcome made =
          run(
              Duration.ofMinutes(5),
              binaries.program("initdb"),
              "--pgdata=" + partial,
              "--username=" + administrator,
              "--pwfile=" + secret,
              "--auth=scram-sha-256",
              "--encoding=UTF8",
              "--locale=C",
              "--locale-provider=builtin",
              "--builtin-locale=C.UTF-8",
              "--no-instructions");
      if (!made.succeeded()) {
        throw new CannotStart(
            "The database could not be made in %s: %s".formatted(folder.root(), made.lastLine()));
      }
    } finally {
      Files.deleteIfExists(secret);
    }
    Files.move(partial, folder.database(), StandardCopyOption.ATOMIC_MOVE);
  }

  /**
   * Starts the server and waits until it answers.
   *
   * @return the port it listens on, chosen freely, on this machine's own address only
   */
  int start() throws IOException {
    account.own(folder.database());
    prepareLog();
    for (int attempt = 1; ; attempt++) {
      int port = freePort();
      if (started(port)) {
        return port;
      }
      if (attempt == TRIES || !Files.readString(folder.log()).contains("could not bind")) {
        throw new CannotStart(
            "The database in %s did not start; %s says why."
                .formatted(folder.root(), folder.log()));
      }
    }
  }

  /**
   * Starts the server again at a port.
   *
   * @throws CannotStart if it does not answer then
   */
  void start(int port) throws IOException {
    if (!started(port)) {
      throw new CannotStart(
          "The database in %s did not start again; %s says why."
              .formatted(folder.root(), folder.log()));
    }
  }

  private boolean started(int port) throws IOException {
    return run(
            START_LIMIT.plusSeconds(10),
            binaries.program("pg_ctl"),
            "start",
            "--wait",
            "--silent",
            "--timeout=" + START_LIMIT.toSeconds(),
            "--pgdata=" + folder.database(),
            "--log=" + folder.log(),
            "--options=" + options(port))
        .succeeded();
  }

  /** Stops the server in an orderly way, or hard if that takes too long. */
  void stop() throws IOException {
    if (!stop("fast")) {
      stop("immediate");
    }
  }

  private boolean stop(String mode) throws IOException {
    return run(
            STOP_LIMIT.plusSeconds(10),
            binaries.program("pg_ctl"),
            "stop",
            "--wait",
            "--silent",
            "--timeout=" + STOP_LIMIT.toSeconds(),
            "--pgdata=" + folder.database(),
            "--mode=" + mode)
        .succeeded();
  }

  /** Settings for a small machine; durability stays as PostgreSQL ships it (fsync on). */
  private static String options(int port) {
    return String.join(
        " ",
        "-c listen_addresses=127.0.0.1",
        "-c port=" + port,
        "-c unix_socket_directories=",
        "-c fsync=on",
        "-c shared_buffers=64MB",
        "-c max_connections=40",
        "-c max_wal_size=512MB",
        "-c password_encryption=scram-sha-256",
        "-c TimeZone=UTC",
        "-c log_timezone=UTC",
        "-c log_checkpoints=off",
        "-c jit=off");
  }

  private void prepareLog() throws IOException {
    Path log = folder.log();
    if (Files.exists(log) && Files.size(log) > LOG_BYTES_MAX) {
      Files.move(log, log.resolveSibling("database.log.1"), StandardCopyOption.REPLACE_EXISTING);
    }
    if (!Files.exists(log)) {
      DatabasePassword.createPrivate(log);
    }
    account.own(log);
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      return socket.getLocalPort();
    }
  }

  private Command.Outcome run(Duration limit, String... command) throws IOException {
    return Command.run(folder.root(), account.command(List.of(command)), limit);
  }
}
