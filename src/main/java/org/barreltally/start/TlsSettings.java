package org.barreltally.start;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the environment says about HTTPS. Phones want it: only a page that came over HTTPS may be
 * kept for flight mode and may lock its key behind a PIN.
 *
 * @param port the TCP port, 1 to 65535; 0 for no HTTPS
 * @param chosen whether somebody chose the port, so that a taken one ends the start
 * @param certificate a certificate (chain) of the owner's own, PEM; empty for one of the tool's
 *     making
 * @param key its private key, PEM
 * @param names under which phones reach this machine, beside those it knows itself
 */
public record TlsSettings(
    int port, boolean chosen, Optional<Path> certificate, Optional<Path> key, List<String> names) {

  private static final String PORT = "HTTPS_PORT";
  private static final String CERTIFICATE = "BARRELTALLY_TLS_CERT";
  private static final String KEY = "BARRELTALLY_TLS_KEY";
  private static final String NAMES = "BARRELTALLY_NAMES";
  private static final int USUAL_PORT = 8443;

  private static final Pattern NAME =
      Pattern.compile("(?=.{1,253}$)[A-Za-z0-9]([A-Za-z0-9-]{0,62})(\\.[A-Za-z0-9-]{1,63})*");

  /**
   * Reads the settings.
   *
   * @param http the port of HTTP, which HTTPS cannot share
   * @throws CannotStart when a value cannot be used; the sentence names the variable
   */
  static TlsSettings from(Map<String, String> environment, int http) {
    Optional<String> said = text(environment, PORT);
    int port = said.map(TlsSettings::port).orElse(USUAL_PORT);
    if (port == http) {
      if (said.isPresent()) {
        throw new CannotStart(PORT + " must be another port than PORT.");
      }
      port = 0;
    }
    Optional<Path> certificate = file(environment, CERTIFICATE);
    Optional<Path> key = file(environment, KEY);
    if (certificate.isPresent() != key.isPresent()) {
      throw new CannotStart(CERTIFICATE + " and " + KEY + " must be set together, or neither.");
    }
    return new TlsSettings(port, said.isPresent(), certificate, key, names(environment));
  }

  /** Whether HTTPS is wanted. */
  boolean isOn() {
    return port != 0;
  }

  private static Optional<String> text(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name)).map(String::strip).filter(t -> !t.isEmpty());
  }

  private static int port(String text) {
    if (text.equalsIgnoreCase("off") || text.equals("0")) {
      return 0;
    }
    if (text.matches("[0-9]{1,5}")) {
      int port = Integer.parseInt(text);
      if (port >= 1 && port <= 65535) {
        return port;
      }
    }
    throw new CannotStart(PORT + " must be a whole number from 1 to 65535, or off.");
  }

  private static Optional<Path> file(Map<String, String> environment, String name) {
    Optional<String> said = text(environment, name);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    try {
      Path path = Path.of(said.get()).toAbsolutePath().normalize();
      if (Files.isReadable(path) && Files.isRegularFile(path)) {
        return Optional.of(path);
      }
    } catch (InvalidPathException e) {
      throw new CannotStart(name + " is not a path that this system can use.", e);
    }
    throw new CannotStart(name + " names a file that is not there or cannot be read.");
  }

  private static List<String> names(Map<String, String> environment) {
    List<String> names =
        text(environment, NAMES).map(t -> List.of(t.split("[,\\s]+"))).orElse(List.of());
    for (String name : names) {
      if (!NAME.matcher(name).matches()) {
        throw new CannotStart(
            NAMES + " must be names or addresses of this machine with commas between them.");
      }
    }
    return names;
  }
}
