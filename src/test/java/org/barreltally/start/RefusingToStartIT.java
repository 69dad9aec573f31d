package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One sentence on the error stream and exit code 1. One running program serves all these tests. */
class RefusingToStartIT {

  @TempDir static Path parent;
  private static Path data;
  private static Program running;
  private static DatabaseLogin owner;

  @BeforeAll
  static void start() throws IOException {
    data = parent.resolve("data");
    running = Program.start(Program.dataIn(data)).awaitReady();
    owner = FolderDatabase.ownerIn(data);
  }

  @AfterAll
  static void stop() throws IOException {
    running.close();
  }

  @Test
  void on_a_data_folder_in_use() throws Exception {
    refuses("data is in use by another running Barreltally", Program.dataIn(data));
    assertEquals("1", FolderDatabase.sql(owner, "SELECT 1"), "the running one is not harmed");
  }

  @Test
  void on_a_taken_port_before_anything_is_made() throws Exception {
    Path fresh = parent.resolve("fresh");
    try (ServerSocket taken = new ServerSocket(0)) {
      refuses(
          "Port " + taken.getLocalPort() + " is taken",
          Map.of(
              "BARRELTALLY_DATA", fresh.toString(),
              "PORT", Integer.toString(taken.getLocalPort())));
    }
    assertTrue(Files.notExists(fresh.resolve("database")));
  }

  @Test
  void on_an_outside_database_that_does_not_answer() throws Exception {
    refuses(
        "cannot be reached", outside("postgresql://127.0.0.1:" + Program.freePort() + "/x", "p"));
  }

  @Test
  void on_an_outside_database_with_a_wrong_password() throws Exception {
    refuses("does not let the role barreltally in", outside(owner.jdbcUrl(), "wrong"));
  }

  @Test
  void on_an_address_that_is_none() throws Exception {
    refuses("BARRELTALLY_DB_URL must look like", outside("postgresql://db:port/x", "p"));
  }

  @Test
  void on_data_of_another_postgresql() throws Exception {
    Path old = parent.resolve("old");
    Files.createDirectories(old.resolve("database"));
    Files.writeString(old.resolve("database/PG_VERSION"), "9\n");
    Files.writeString(old.resolve("database-password"), "p\n");

    refuses("was made by PostgreSQL 9", Program.dataIn(old));
  }

  @Test
  void on_a_database_that_cannot_be_brought_up_to_date() throws Exception {
    FolderDatabase.sql(administrator(), "CREATE DATABASE astray OWNER barreltally");
    DatabaseLogin astray =
        new DatabaseLogin(
            owner.jdbcUrl().replaceFirst("[^/]*$", "astray"),
            "astray",
            owner.user(),
            owner.password());
    FolderDatabase.sql(astray, "CREATE TABLE flyway_schema_history (nothing int)");

    refuses("could not be brought up to date", outside(astray.jdbcUrl(), owner.password()));
  }

  @Test
  void but_a_second_copy_shares_an_outside_database() throws Exception {
    try (Program second = Program.start(outside(owner.jdbcUrl(), owner.password())).awaitReady()) {
      assertEquals(List.of(), second.errors());
      assertTrue(List.of(0, 143).contains(second.stop()));
    }
    assertEquals("1", FolderDatabase.sql(owner, "SELECT 1"), "an outside database is left running");
  }

  private static DatabaseLogin administrator() {
    return owner.as("postgres", owner.password());
  }

  private static Map<String, String> outside(String url, String password) {
    return Map.of(
        "BARRELTALLY_DB_URL", url,
        "BARRELTALLY_DB_USER", "barreltally",
        "BARRELTALLY_DB_PASSWORD", password);
  }

  private static void refuses(String words, Map<String, String> settings) throws Exception {
    try (Program program = Program.startAnew(new HashMap<>(settings))) {
      assertEquals(1, program.exitCode(), program::output);
      List<String> errors = program.errors();
      assertEquals(1, errors.size(), () -> String.join("\n", errors));
      assertTrue(errors.get(0).contains(words), errors.get(0));
      assertEquals("", program.output());
    }
  }
}
