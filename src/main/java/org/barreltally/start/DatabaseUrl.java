package org.barreltally.start;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.postgresql.Driver;

/**
 * The address of a PostgreSQL database, read from {@code jdbc:postgresql://host:5432/name} or
 * {@code postgresql://host:5432/name}, with or without a user and password before the host.
 *
 * @param jdbcUrl the address for the driver, free of user and password
 * @param database the database's name
 */
record DatabaseUrl(
    String jdbcUrl, String database, Optional<String> user, Optional<String> password) {

  /** A name or address, an IPv6 address in brackets, and perhaps a port. */
  private static final String HOST = "(?:\\[[0-9a-fA-F:.]+\\]|[^:/?@,\\[\\]\\s]+)(?::[0-9]{1,5})?";

  private static final Pattern PORT = Pattern.compile(":([0-9]{1,5})(?=,|$)");
  private static final int PORT_MAX = 65535;

  /** A name that needs no quotes and leaves room for the words that a restore adds to it. */
  private static final Pattern SCHEMA = Pattern.compile("(?!pg_)[a-z][a-z0-9_]{0,39}");

  private static final Pattern FORM =
      Pattern.compile(
          "(?:jdbc:)?postgres(?:ql)?://"
              + "(?:(?<user>[^/?@:]*)(?::(?<password>[^/?@]*))?@)?"
              + "(?<hosts>"
              + HOST
              + "(?:,"
              + HOST
              + ")*)/(?<database>[^/?\\s]+)(?:\\?(?<options>\\S*))?");

  /**
   * Reads an address.
   *
   * @param setting the setting's name, for the sentence
   * @throws CannotStart when the text is no such address; the text is not repeated, it may hold a
   *     password
   */
  static DatabaseUrl parse(String setting, String text) {
    Matcher parts = FORM.matcher(text);
    if (!parts.matches() || !portsFit(parts.group("hosts"))) {
      throw unreadable(setting);
    }
    String options = Optional.ofNullable(parts.group("options")).orElse("");
    if (Arrays.stream(options.toLowerCase(Locale.ROOT).split("&"))
        .anyMatch(o -> o.startsWith("user=") || o.startsWith("password="))) {
      throw new CannotStart(
          "Leave user and password out of the options of "
              + setting
              + " and give them as BARRELTALLY_DB_USER and BARRELTALLY_DB_PASSWORD.");
    }
    String url =
        "jdbc:postgresql://"
            + parts.group("hosts")
            + "/"
            + parts.group("database")
            + (options.isEmpty() ? "" : "?" + options);
    Properties read = Driver.parseURL(url, null);
    if (read == null) {
      throw unreadable(setting);
    }
    String schema = read.getProperty("currentSchema");
    if (schema != null && !SCHEMA.matcher(schema).matches()) {
      throw new CannotStart(
          "currentSchema in the options of "
              + setting
              + " must be one name of at most 40 small letters, digits and underscores, a letter first.");
    }
    return new DatabaseUrl(
        url,
        read.getProperty("PGDBNAME"),
        Optional.ofNullable(parts.group("user")).map(DatabaseUrl::decoded),
        Optional.ofNullable(parts.group("password")).map(DatabaseUrl::decoded));
  }

  private static boolean portsFit(String hosts) {
    return PORT.matcher(hosts).results().allMatch(p -> Integer.parseInt(p.group(1)) <= PORT_MAX);
  }

  private static CannotStart unreadable(String setting) {
    return new CannotStart(setting + " must look like postgresql://host:5432/database.");
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text.replace("+", "%2B"), StandardCharsets.UTF_8);
  }
}
