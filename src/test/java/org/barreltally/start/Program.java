package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.net.BindException;
import java.net.HttpURLConnection;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** The built program in a process of its own, as a person would start it. */
public final class Program implements AutoCloseable {

  /** Of the owner in books made for tests. */
  public static final String PASSWORD = "what the tests sign in with";

  /** A token of the owner in books made ready for tests; judging a password takes 2 s at first. */
  static final String TOKEN = "btl_known-to-every-test";

  /** Lets the owner of a book made ready in, as the header Authorization. */
  public static final String LOGIN = "Bearer " + TOKEN;

  /** The secret of a session that lets the owner of a book made ready in to the pages. */
  public static final String SESSION = "known-to-every-test-of-pages";

  static final Path JAR = Path.of("target/quarkus-app/quarkus-run.jar").toAbsolutePath();
  private static final String DATA = "BARRELTALLY_DATA";
  private static final String OWNER_PASSWORD = "BARRELTALLY_OWNER_PASSWORD";
  private static final long SECONDS_MAX = 180;

  /** A program that lives for a minute is not worth compiling for a day. */
  private static final List<String> SHORT_LIVED =
      System.getProperty("barreltally.minutes") == null
          ? List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC")
          : List.of();

  private final Process process;
  private final int port;
  private final Path out;
  private final Path err;

  private Program(Process process, int port, Path out, Path err) {
    this.process = process;
    this.port = port;
    this.out = out;
    this.err = err;
  }

  /**
   * Starts it with these settings beside those of the machine, on a free port if none is named. A
   * data folder without a book is given an empty one first, as a first start would make it: with an
   * owner who has a password and a token if the settings name the password, without one if not.
   */
  public static Program start(Map<String, String> settings) throws IOException {
    if (keepsItsOwnBook(settings)) {
      Path data = Path.of(settings.get(DATA));
      if (PASSWORD.equals(settings.get(OWNER_PASSWORD))) {
        ReadyBook.ownedInto(data);
      } else {
        ReadyBook.emptyInto(data);
      }
    }
    return run(settings);
  }

  /**
   * Starts it on a copy of the invented season, whose owner's password is {@link #PASSWORD}, or
   * again on what it left there.
   */
  public static Program startSeason(Map<String, String> settings) throws IOException {
    assertTrue(keepsItsOwnBook(settings));
    ReadyBook.seasonInto(Path.of(settings.get(DATA)));
    return run(settings);
  }

  /** Starts it so that it makes everything but PostgreSQL's programs itself. */
  public static Program startAnew(Map<String, String> settings, String... arguments)
      throws IOException {
    if (settings.containsKey(DATA)) {
      UnpackedServer.into(Path.of(settings.get(DATA)));
    }
    return run(settings, arguments);
  }

  private static boolean keepsItsOwnBook(Map<String, String> settings) {
    return settings.containsKey(DATA)
        && !settings.containsKey("BARRELTALLY_DB_URL")
        && !settings.containsKey("BARRELTALLY_BOOKS");
  }

  /** Starts it with arguments after its name, or without any on a folder as it is. */
  public static Program run(Map<String, String> settings, String... arguments) throws IOException {
    assertTrue(Files.exists(JAR), "build the program first: mvn package");
    int port = settings.containsKey("PORT") ? Integer.parseInt(settings.get("PORT")) : freePort();
    Path out = Files.createTempFile("barreltally", ".out");
    Path err = Files.createTempFile("barreltally", ".err");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(SHORT_LIVED);
    command.addAll(ReadyMade.classes(JAR));
    command.add("-jar");
    command.add(JAR.toString());
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeIf(name -> name.startsWith("BARRELTALLY_"));
    builder.environment().put("PORT", Integer.toString(port));
    builder.environment().putAll(settings);
    builder.redirectOutput(out.toFile()).redirectError(err.toFile());
    Process process = builder.start();
    ReadyMade.keepClassesOf(process, command);
    return new Program(process, port, out, err);
  }

  /** The settings of a book of its own whose owner has a password, over HTTP alone. */
  public static Map<String, String> ownBook(Path folder) {
    return Map.of(DATA, folder.toString(), OWNER_PASSWORD, PASSWORD, "HTTPS_PORT", "off");
  }

  /** Lets the owner in by the password, as the header Authorization. */
  public static String loginByPassword() {
    return basic(PASSWORD);
  }

  /** The header Authorization of the owner with that password. */
  static String basic(String password) {
    String login = "owner:" + password;
    return "Basic " + Base64.getEncoder().encodeToString(login.getBytes(StandardCharsets.UTF_8));
  }

  public static Map<String, String> dataIn(Path folder) {
    return Map.of(DATA, folder.toString());
  }

  /**
   * A free port below those that systems hand to outgoing connections (32768 and up on Linux, 49152
   * and up elsewhere). Among those, the question whether the program answers yet could be given the
   * very port it asks, and so take it from the program.
   */
  static int freePort() throws IOException {
    for (int port : new Random().ints(1000, 20_000, 32_000).toArray()) {
      try (ServerSocket socket = new ServerSocket(port)) {
        return socket.getLocalPort();
      } catch (BindException taken) {
        continue;
      }
    }
    return fail("no free port");
  }

  public int port() {
    return port;
  }

  public Program awaitReady() throws IOException {
    await(() -> !process.isAlive() || answersReady());
    assertTrue(process.isAlive(), () -> "ended instead of starting: " + errors());
    return this;
  }

  private boolean answersReady() {
    try {
      URI address = URI.create("http://localhost:" + port + "/q/health/ready");
      HttpURLConnection connection = (HttpURLConnection) address.toURL().openConnection();
      connection.setConnectTimeout(2000);
      connection.setReadTimeout(5000);
      return connection.getResponseCode() == 200;
    } catch (IOException notYet) {
      return false;
    }
  }

  /** Whether its process lives. */
  public boolean isAlive() {
    return process.isAlive();
  }

  /** Tells it to end as a service manager would, and gives its exit code. */
  public int stop() throws InterruptedException {
    process.destroy();
    return exitCode();
  }

  /** Ends it without a chance to tidy up (SIGKILL). */
  public void kill() throws InterruptedException {
    process.destroyForcibly();
    exitCode();
  }

  int exitCode() throws InterruptedException {
    assertTrue(process.waitFor(SECONDS_MAX, TimeUnit.SECONDS), "did not end");
    return process.exitValue();
  }

  public String output() {
    return read(out);
  }

  /** What it said on the error stream, without warnings of the Java machine itself. */
  public List<String> errors() {
    return read(err).lines().filter(line -> !line.startsWith("WARNING:")).toList();
  }

  /** What it warned of in its log, with the lines that say where. */
  public List<String> warnings() {
    return read(out)
        .lines()
        .filter(line -> line.contains(" WARN ") || line.startsWith("Caused by: "))
        .toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return fail(e);
    }
  }

  /** Waits for a state that must come; fails if it does not. */
  public static void await(BooleanSupplier state) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS_MAX);
    while (!state.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, "waited in vain");
      try {
        Thread.sleep(20);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        fail(e);
      }
    }
  }

  @Override
  public void close() throws IOException {
    process.destroy();
    try {
      if (!process.waitFor(SECONDS_MAX, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
    }
    Files.deleteIfExists(out);
    Files.deleteIfExists(err);
  }
}
