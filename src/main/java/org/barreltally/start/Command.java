package org.barreltally.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs one program to its end. */
final class Command {

  /**
   * How it ended.
   *
   * @param exit the exit code
   * @param output what it printed, both streams
   */
  record Outcome(int exit, String output) {
    boolean succeeded() {
      return exit == 0;
    }

    /** The last line that says something, for an error sentence. */
    String lastLine() {
      return output.lines().filter(line -> !line.isBlank()).reduce("", (a, b) -> b).strip();
    }
  }

  private Command() {}

  /**
   * Runs a program in a folder, in English, and without PostgreSQL settings of the caller's
   * environment. Its output goes through a file: a server it leaves behind would keep a pipe open.
   *
   * @throws IOException when the program is missing or cannot be run here
   * @throws CannotStart when it does not end within the limit; it is then killed
   */
  static Outcome run(Path folder, List<String> command, Duration limit) throws IOException {
    Path output = Files.createTempFile("barreltally", ".out");
    try {
      ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
      builder.environment().keySet().removeIf(name -> name.startsWith("PG"));
      builder.environment().put("LC_ALL", "C");
      builder.redirectErrorStream(true).redirectOutput(output.toFile());
      Process process = builder.start();
      process.getOutputStream().close();
      if (!process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS)) {
        process.destroyForcibly();
        throw new CannotStart(
            "%s did not end within %d s.".formatted(program(command), limit.toSeconds()));
      }
      return new Outcome(
          process.exitValue(), new String(Files.readAllBytes(output), StandardCharsets.UTF_8));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CannotStart("Interrupted while waiting for " + program(command) + ".", e);
    } finally {
      deleteQuietly(output);
    }
  }

  private static String program(List<String> command) {
    return Path.of(command.get(0)).getFileName().toString();
  }

  /**
   * On Windows a server left behind may hold the file; the system's temporary folder is then it.
   */
  private static void deleteQuietly(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      file.toFile().deleteOnExit();
    }
  }
}
