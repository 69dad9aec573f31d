package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands of the built program, over the invented season. */
class KeepingCommandsIT {

  private static final List<String> ASKED =
      List.of("/api/stock?limit=500", "/api/barrels?limit=500", "/api/movements?limit=500");

  @TempDir static Path parent;
  private static Path data;
  private static Path file;
  private static Map<String, String> told = new HashMap<>();

  @BeforeAll
  static void a_season_is_saved_while_the_program_runs() throws Exception {
    data = parent.resolve("first farm");
    file = parent.resolve("saved.zip");
    try (Program program = Program.startSeason(Program.dataIn(data)).awaitReady()) {
      for (String path : ASKED) {
        told.put(path, ask(program, path));
      }
      done("Saved to " + file, Program.dataIn(data), "backup", file);
      an_outside_database_is_named_by_its_three_settings();
      an_owner_who_lost_the_password_is_let_in_from_the_machine(program);
      program.stop();
    }
  }

  /** Here the running program's own server stands for the outside one. */
  private static void an_outside_database_is_named_by_its_three_settings() throws Exception {
    DatabaseLogin owner = FolderDatabase.ownerIn(data);
    FolderDatabase.sql(
        owner.as("postgres", owner.password()), "CREATE DATABASE beside OWNER barreltally");
    String beside = owner.jdbcUrl().replaceFirst("[^/]*$", "beside");
    Path saved = parent.resolve("outside.zip");

    done("Saved to " + saved, outside(owner, owner.jdbcUrl()), "backup", saved);
    refused("is signed in to the database", outside(owner, owner.jdbcUrl()), "restore", saved);
    done("Restored " + saved, outside(owner, beside), "restore", saved);

    String entries = "SELECT count(*) FROM entries";
    assertEquals(
        FolderDatabase.sql(owner, entries),
        FolderDatabase.sql(
            new DatabaseLogin(beside, "beside", owner.user(), owner.password()), entries));
  }

  private static void an_owner_who_lost_the_password_is_let_in_from_the_machine(Program program)
      throws Exception {
    String said;
    try (Program command = Program.run(Program.dataIn(data), "let-in", "owner")) {
      assertEquals(0, command.exitCode(), () -> command.output() + command.errors());
      said = command.output();
    }
    Matcher password = Pattern.compile("Sign in as owner with password (\\S+)").matcher(said);
    assertTrue(password.find(), said);
    assertEquals(200, status(program, password.group(1)));
    refused("Nobody signs in as ownr.", Program.dataIn(data), "let-in", "ownr");
  }

  private static Map<String, String> outside(DatabaseLogin owner, String url) {
    return Map.of(
        "BARRELTALLY_DB_URL", url,
        "BARRELTALLY_DB_USER", owner.user(),
        "BARRELTALLY_DB_PASSWORD", owner.password());
  }

  @Test
  void a_new_installation_tells_the_same_after_the_restore() throws Exception {
    Path second = parent.resolve("second farm");

    done("Restored " + file, Program.dataIn(second), "restore", file);

    assertEquals(
        List.of(), FolderDatabase.serversIn(second), "the command's database ends with it");
    try (Program program = Program.start(Program.dataIn(second)).awaitReady()) {
      for (String path : ASKED) {
        assertEquals(told.get(path), ask(program, path), path);
      }
      assertFalse(ask(program, "/api/ledger/invariants").contains("violations\":[{"));
      assertEquals(List.of(), program.errors());
    }
  }

  @Test
  void an_installation_that_was_only_started_and_looked_at_takes_a_backup() throws Exception {
    Path looked = parent.resolve("looked at");
    try (Program program = Program.start(Program.dataIn(looked)).awaitReady()) {
      refused("is in use by another running", Program.dataIn(looked), "restore", file);
      program.stop();
    }

    done("Restored " + file, Program.dataIn(looked), "restore", file);

    refused("holds", Program.dataIn(looked), "restore", file);
  }

  @Test
  void a_stopped_installation_is_saved_too() throws Exception {
    Path again = parent.resolve("again.zip");
    done("Saved to " + again, Program.dataIn(data), "backup", again);
    assertEquals(List.of(), FolderDatabase.serversIn(data));
    assertTrue(Files.size(again) > 1000);
    refused("of this name already", Program.dataIn(data), "backup", again);
  }

  private static int status(Program program, String password) throws Exception {
    HttpURLConnection connection =
        (HttpURLConnection)
            URI.create("http://localhost:" + program.port() + "/api/me").toURL().openConnection();
    connection.setRequestProperty("Authorization", Program.basic(password));
    return connection.getResponseCode();
  }

  @Test
  void what_cannot_be_done_is_said_in_one_sentence() throws Exception {
    Path nowhere = parent.resolve("nowhere");
    refused("There is no book in", Program.dataIn(nowhere), "backup", parent.resolve("n.zip"));
    refused("there is no such file", Program.dataIn(nowhere), "restore", parent.resolve("n.zip"));
    refused("Say nothing to start Barreltally", Program.dataIn(nowhere), "burn", file);
    assertFalse(Files.exists(nowhere), "nothing was made");
  }

  private static void done(String words, Map<String, String> settings, String command, Path file)
      throws Exception {
    try (Program program = Program.startAnew(settings, command, file.toString())) {
      assertEquals(0, program.exitCode(), () -> program.output() + program.errors());
      assertEquals(List.of(), program.errors());
      assertTrue(program.output().contains(words), program.output());
    }
  }

  private static void refused(String words, Map<String, String> settings, String command, Path file)
      throws Exception {
    refused(words, settings, command, file.toString());
  }

  private static void refused(
      String words, Map<String, String> settings, String command, String about) throws Exception {
    try (Program program = Program.run(settings, command, about)) {
      assertEquals(1, program.exitCode(), program::output);
      assertEquals(1, program.errors().size(), () -> String.join("\n", program.errors()));
      assertTrue(program.errors().get(0).contains(words), program.errors().get(0));
      assertEquals("", program.output());
    }
  }

  private static String ask(Program program, String path) throws Exception {
    HttpURLConnection connection =
        (HttpURLConnection)
            URI.create("http://localhost:" + program.port() + path).toURL().openConnection();
    connection.setRequestProperty("Authorization", Program.LOGIN);
    return new String(connection.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
