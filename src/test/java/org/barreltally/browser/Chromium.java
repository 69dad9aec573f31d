package org.barreltally.browser;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The system's browser. */
public final class Chromium {

  private static final Path WITHOUT_WINDOWS = Path.of("/usr/bin/chromium-headless-shell");

  /**
   * No page lives long enough in a test to be worth compiling its scripts for; what is compiled at
   * all is kept for the next page.
   */
  private static final List<String> ARGUMENTS =
      List.of("--no-sandbox", "--js-flags=--no-opt,--no-maglev,--no-flush-bytecode");

  private Chromium() {}

  /** What it is started with, and more. */
  public static List<String> arguments(String... more) {
    return Stream.concat(ARGUMENTS.stream(), Stream.of(more)).toList();
  }

  /** The build that never has a window, where there is one: it takes a third less. */
  public static Path program() {
    return Files.exists(WITHOUT_WINDOWS) ? WITHOUT_WINDOWS : Path.of("/usr/bin/chromium");
  }
}
