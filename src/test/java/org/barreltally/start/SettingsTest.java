package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettingsTest {

  @Test
  void an_empty_environment_means_port_8080_and_an_embedded_database_in_data() {
    Settings settings = Settings.from(Map.of());

    assertEquals(8080, settings.port());
    assertEquals(Path.of("data").toAbsolutePath(), settings.data());
    assertTrue(settings.outside().isEmpty());
    assertFalse(settings.demo());
  }

  @Test
  void backups_lie_in_the_data_folder_and_are_made_daily_unless_told_otherwise() {
    assertEquals(
        new BackupSettings(Path.of("farm/backups").toAbsolutePath(), Optional.empty(), 24, 14, 7),
        Settings.from(Map.of("BARRELTALLY_DATA", "farm")).backups());
    assertEquals(
        new BackupSettings(
            Path.of("kept").toAbsolutePath(), Optional.of(Path.of("/media/stick")), 0, 30, 3),
        Settings.from(
                Map.of(
                    "BARRELTALLY_BACKUPS", "kept",
                    "BARRELTALLY_BACKUP_COPY", "/media/stick",
                    "BARRELTALLY_BACKUP_EVERY_HOURS", "0",
                    "BARRELTALLY_BACKUP_KEEP", "30",
                    "BARRELTALLY_BACKUP_WARN_DAYS", "3"))
            .backups());
  }

  @Test
  void settings_of_backups_that_cannot_be_are_refused_by_name() {
    refused(
        "BARRELTALLY_BACKUP_KEEP must be a whole number from 1 to 1000.",
        Map.of("BARRELTALLY_BACKUP_KEEP", "0"));
    refused(
        "BARRELTALLY_BACKUP_EVERY_HOURS must be a whole number from 0 to 8784.",
        Map.of("BARRELTALLY_BACKUP_EVERY_HOURS", "daily"));
    refused(
        "BARRELTALLY_BACKUP_COPY must be another folder than that of the backups.",
        Map.of("BARRELTALLY_BACKUPS", "kept", "BARRELTALLY_BACKUP_COPY", "./kept"));
  }

  @Test
  void several_books_have_names_that_are_host_names_and_schemas() {
    assertEquals(List.of(), Settings.from(Map.of()).books());
    assertEquals(List.of(), Settings.from(Map.of("BARRELTALLY_BOOKS", " ")).books());
    assertEquals(
        List.of("ridge", "hollow2"),
        Settings.from(Map.of("BARRELTALLY_BOOKS", "ridge, hollow2")).books());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ridge,",
        "ridge,ridge",
        "Ridge",
        "2nd",
        "pgridge",
        "public",
        "sugar bush",
        "old_ridge",
        "ridge;hollow",
        "a2345678901234567890123456789012"
      })
  void other_names_of_books_are_refused(String names) {
    refused(
        "BARRELTALLY_BOOKS must be different names with commas between them, each of at most 30"
            + " small letters and digits, a letter first, and none that begins with pg.",
        Map.of("BARRELTALLY_BOOKS", names));
  }

  @Test
  void what_belongs_to_one_book_is_refused_beside_several() {
    refused(
        "The invented season is played in the book of a program that keeps one; leave out"
            + " BARRELTALLY_DEMO or BARRELTALLY_BOOKS.",
        Map.of("BARRELTALLY_BOOKS", "ridge", "BARRELTALLY_DEMO", "yes"));
    refused(
        "With BARRELTALLY_BOOKS each book has the schema of its name; leave currentSchema out of"
            + " the options of BARRELTALLY_DB_URL.",
        Map.of(
            "BARRELTALLY_BOOKS", "ridge",
            "BARRELTALLY_DB_URL", "postgresql://db/syrup?currentSchema=ridge",
            "BARRELTALLY_DB_USER", "coop",
            "BARRELTALLY_DB_PASSWORD", "tapped early"));
  }

  @Test
  void a_blank_variable_means_its_default() {
    assertEquals(8080, Settings.from(Map.of("PORT", " ")).port());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "80", "8081", "65535", " 9000 "})
  void ports_from_1_to_65535_are_taken(String port) {
    assertEquals(Integer.parseInt(port.strip()), Settings.from(Map.of("PORT", port)).port());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "65536", "-1", "80.5", "8o80", "999999999999", "http"})
  void other_ports_are_refused_by_name(String port) {
    refused("PORT must be a whole number from 1 to 65535.", Map.of("PORT", port));
  }

  @ParameterizedTest
  @CsvSource({"true,true", "TRUE,true", "1,true", "yes,true", "false,false", "no,false", "0,false"})
  void demo_is_yes_or_no(String text, boolean demo) {
    assertEquals(demo, Settings.from(Map.of("BARRELTALLY_DEMO", text)).demo());
  }

  @Test
  void another_word_for_demo_is_refused_by_name() {
    refused("BARRELTALLY_DEMO must be true or false.", Map.of("BARRELTALLY_DEMO", "perhaps"));
  }

  @ParameterizedTest
  @CsvSource({
    "jdbc:postgresql://db:5432/syrup, jdbc:postgresql://db:5432/syrup, syrup",
    "postgresql://db:5432/syrup, jdbc:postgresql://db:5432/syrup, syrup",
    "postgres://db/syrup, jdbc:postgresql://db/syrup, syrup",
    "postgresql://[::1]:5433/syrup, jdbc:postgresql://[::1]:5433/syrup, syrup",
    "'postgresql://a:1,b:2/syrup?sslmode=require', 'jdbc:postgresql://a:1,b:2/syrup?sslmode=require', syrup",
    "postgresql://db/maple%20book, jdbc:postgresql://db/maple%20book, maple book",
  })
  void both_forms_of_an_address_are_read(String text, String jdbcUrl, String database) {
    DatabaseLogin login = outside(text);

    assertEquals(jdbcUrl, login.jdbcUrl());
    assertEquals(database, login.database());
    assertEquals("ada", login.user());
    assertEquals("pass:word@", login.password());
  }

  @Test
  void user_and_password_may_stand_in_the_address() {
    DatabaseLogin login =
        Settings.from(Map.of("BARRELTALLY_DB_URL", "postgresql://bo:s%40p+e@db/syrup"))
            .outside()
            .orElseThrow();

    assertEquals("bo", login.user());
    assertEquals("s@p+e", login.password());
    assertEquals("jdbc:postgresql://db/syrup", login.jdbcUrl());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mysql://db/syrup",
        "db:5432",
        "postgresql://db",
        "postgresql:///syrup",
        "postgresql://db:port/syrup",
        "postgresql://db:99999/syrup",
        "jdbc:postgresql:syrup",
        "postgresql://bo:secret@db"
      })
  void another_address_is_refused_without_repeating_it(String text) {
    refused(
        "BARRELTALLY_DB_URL must look like postgresql://host:5432/database.",
        outsideEnvironment(text));
  }

  @ParameterizedTest
  @CsvSource({"'', public", "?sslmode=require, public", "?ssl=true&currentSchema=ridge_2, ridge_2"})
  void the_schema_of_the_book_is_named_among_the_options(String options, String schema) {
    assertEquals(
        schema, outside("postgresql://db/syrup" + (options == null ? "" : options)).schema());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "ridge,public",
        "Ridge",
        "2ridge",
        "pg_temp",
        "a;b",
        "a%22b",
        "abcdefghijklmnopqrstuvwxyz0123456789_too_long"
      })
  void another_schema_is_refused(String schema) {
    refused(
        "currentSchema in the options of BARRELTALLY_DB_URL must be one name of at most 40 small"
            + " letters, digits and underscores, a letter first.",
        outsideEnvironment("postgresql://db/syrup?currentSchema=" + schema));
  }

  @Test
  void a_password_among_the_options_is_refused() {
    refused(
        "Leave user and password out of the options of BARRELTALLY_DB_URL and give them as"
            + " BARRELTALLY_DB_USER and BARRELTALLY_DB_PASSWORD.",
        outsideEnvironment("postgresql://db/syrup?ssl=true&password=x"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"BARRELTALLY_DB_USER", "BARRELTALLY_DB_PASSWORD"})
  void an_address_needs_a_user_and_a_password(String missing) {
    Map<String, String> environment = outsideEnvironment("postgresql://db/syrup");
    environment.remove(missing);

    CannotStart refusal = assertThrows(CannotStart.class, () -> Settings.from(environment));

    assertTrue(refusal.getMessage().contains(missing), refusal.getMessage());
  }

  @Test
  void a_login_does_not_show_its_password() {
    assertEquals(
        "ada at postgresql://db/syrup", outside("postgresql://db/syrup?ssl=true").toString());
  }

  private static DatabaseLogin outside(String url) {
    return Settings.from(outsideEnvironment(url)).outside().orElseThrow();
  }

  private static Map<String, String> outsideEnvironment(String url) {
    Map<String, String> environment = new HashMap<>();
    environment.put("BARRELTALLY_DB_URL", url);
    environment.put("BARRELTALLY_DB_USER", "ada");
    environment.put("BARRELTALLY_DB_PASSWORD", "pass:word@");
    return environment;
  }

  private static void refused(String sentence, Map<String, String> environment) {
    CannotStart refusal = assertThrows(CannotStart.class, () -> Settings.from(environment));
    assertEquals(sentence, refusal.getMessage());
  }
}
