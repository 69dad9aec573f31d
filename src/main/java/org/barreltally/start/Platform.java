package org.barreltally.start;

import java.util.Locale;

/**
 * The system and processor, in the words of the PostgreSQL archives on the class path.
 *
 * @param system linux, darwin or windows
 * @param processor x86_64 or arm_64
 */
record Platform(String system, String processor) {

  /** This machine. */
  static Platform current() {
    return of(System.getProperty("os.name"), System.getProperty("os.arch"));
  }

  /**
   * Reads Java's {@code os.name} and {@code os.arch}.
   *
   * @throws CannotStart when no archive fits
   */
  static Platform of(String osName, String osArch) {
    String os = osName.toLowerCase(Locale.ROOT);
    String system =
        os.contains("linux")
            ? "linux"
            : os.contains("mac") || os.contains("darwin")
                ? "darwin"
                : os.startsWith("windows") ? "windows" : null;
    String processor =
        switch (osArch.toLowerCase(Locale.ROOT)) {
          case "amd64", "x86_64" -> "x86_64";
          // Windows runs x86_64 programs on ARM; there is no archive of its own
          case "aarch64", "arm64" -> "windows".equals(system) ? "x86_64" : "arm_64";
          default -> null;
        };
    if (system == null || processor == null) {
      throw new CannotStart(
          "There is no embedded PostgreSQL for %s on %s; name an outside one with BARRELTALLY_DB_URL, _USER and _PASSWORD."
              .formatted(osName, osArch));
    }
    return new Platform(system, processor);
  }

  /** The archive's name on the class path. */
  String archive() {
    return "postgres-" + system + "-" + processor + ".txz";
  }

  /** The file name of a program on this system. */
  String program(String name) {
    return isWindows() ? name + ".exe" : name;
  }

  boolean isWindows() {
    return "windows".equals(system);
  }
}
