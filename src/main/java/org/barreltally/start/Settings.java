package org.barreltally.start;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the environment asks for.
 *
 * @param port the TCP port of the web pages and the REST interface, 1 to 65535
 * @param data the data folder, absolute
 * @param outside the login of an outside database's owner; empty for the embedded one
 * @param books the names of several books; empty for one
 * @param demo whether an invented season is played on an empty database
 * @param backups where backups go and how many are kept
 * @param tls HTTPS beside HTTP
 */
public record Settings(
    int port,
    Path data,
    Optional<DatabaseLogin> outside,
    List<String> books,
    boolean demo,
    BackupSettings backups,
    TlsSettings tls) {

  private static final String PORT = "PORT";
  private static final String DATA = "BARRELTALLY_DATA";
  private static final String DEMO = "BARRELTALLY_DEMO";
  private static final String URL = "BARRELTALLY_DB_URL";
  private static final String USER = "BARRELTALLY_DB_USER";
  private static final String PASSWORD = "BARRELTALLY_DB_PASSWORD";

  /**
   * Reads the settings; a variable that is unset or blank means its default.
   *
   * @throws CannotStart when a value cannot be used; the sentence names the variable
   */
  public static Settings from(Map<String, String> environment) {
    Path data = folder(text(environment, DATA).orElse("data"));
    int port = port(text(environment, PORT).orElse("8080"));
    Optional<DatabaseLogin> outside = text(environment, URL).map(url -> outside(url, environment));
    boolean demo = flag(text(environment, DEMO).orElse("false"));
    return new Settings(
        port,
        data,
        outside,
        BookNames.from(text(environment, BookNames.SETTING).orElse(""), outside, demo),
        demo,
        BackupSettings.from(environment, data),
        TlsSettings.from(environment, port));
  }

  private static Optional<String> text(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name)).map(String::strip).filter(t -> !t.isEmpty());
  }

  private static int port(String text) {
    if (text.matches("[0-9]{1,5}")) {
      int port = Integer.parseInt(text);
      if (port >= 1 && port <= 65535) {
        return port;
      }
    }
    throw new CannotStart(PORT + " must be a whole number from 1 to 65535.");
  }

  private static Path folder(String text) {
    try {
      return Path.of(text).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw new CannotStart(DATA + " is not a path that this system can use.", e);
    }
  }

  private static boolean flag(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "true", "yes", "1" -> true;
      case "false", "no", "0" -> false;
      default -> throw new CannotStart(DEMO + " must be true or false.");
    };
  }

  private static DatabaseLogin outside(String url, Map<String, String> environment) {
    DatabaseUrl address = DatabaseUrl.parse(URL, url);
    String user =
        text(environment, USER)
            .or(address::user)
            .orElseThrow(() -> new CannotStart(missing(USER, "the database's owner")));
    String password =
        Optional.ofNullable(environment.get(PASSWORD))
            .filter(p -> !p.isEmpty())
            .or(address::password)
            .orElseThrow(() -> new CannotStart(missing(PASSWORD, "that role's password")));
    return new DatabaseLogin(address.jdbcUrl(), address.database(), user, password);
  }

  private static String missing(String name, String what) {
    return URL + " is set, so " + name + " must name " + what + " too.";
  }
}
