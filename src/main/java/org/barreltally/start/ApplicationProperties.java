package org.barreltally.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.books.Book;

/** What the start found out, in the words of the framework's configuration. */
public final class ApplicationProperties {

  private ApplicationProperties() {}

  /** The two logins: migrations run as the owner, everything else as the application's role. */
  public static Map<String, String> database(DatabaseLogin owner, DatabaseLogin application) {
    Map<String, String> properties = new LinkedHashMap<>();
    properties.put("quarkus.datasource.jdbc.url", application.jdbcUrl());
    properties.put("quarkus.datasource.username", application.user());
    properties.put("quarkus.datasource.password", application.password());
    properties.put("quarkus.flyway.jdbc-url", owner.jdbcUrl());
    properties.put("quarkus.flyway.username", owner.user());
    properties.put("quarkus.flyway.password", owner.password());
    properties.put("quarkus.flyway.placeholders.app_role", application.user());
    return properties;
  }

  /** Several books, whose tables were looked after before. */
  static Map<String, String> ofSeveral(List<Book> books) {
    return Map.of(
        "barreltally.books",
        books.stream().map(Book::written).collect(Collectors.joining(",")),
        "quarkus.flyway.migrate-at-start",
        "false",
        "quarkus.flyway.validate-at-start",
        "false");
  }

  /**
   * What is otherwise where the database only reads: nothing is migrated, played or saved on a
   * schedule, and the tables must be those of this version.
   */
  static Map<String, String> ofStandby() {
    return Map.of(
        "barreltally.reading-copy", "true",
        "barreltally.demo", "false",
        "barreltally.backups.every-hours", "0",
        "quarkus.flyway.migrate-at-start", "false",
        "quarkus.flyway.validate-at-start", "true");
  }

  /** The rest of the settings; {@code barreltally.data} says for people where the data lies. */
  static Map<String, String> of(Settings settings) {
    Map<String, String> properties = new LinkedHashMap<>();
    properties.put("quarkus.http.port", Integer.toString(settings.port()));
    properties.put("barreltally.demo", Boolean.toString(settings.demo()));
    properties.put(
        "barreltally.data",
        settings.outside().map(DatabaseLogin::address).orElse(settings.data().toString()));
    properties.putAll(settings.backups().properties());
    return properties;
  }
}
