package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The data survives every way in which a run can end. */
class StartingAgainIT {

  private static final String COUNT = "SELECT count(*) FROM kept";

  @TempDir static Path parent;
  private static Path data;

  @BeforeAll
  static void the_first_start_makes_everything() throws Exception {
    data = parent.resolve("data of a farm");
    try (Program first = Program.startAnew(Program.dataIn(data)).awaitReady()) {
      Program.await(() -> first.output().contains("data lies in " + data));
      assertTrue(first.output().contains("http://localhost:" + first.port() + "/"));
      DatabaseLogin owner = FolderDatabase.ownerIn(data);
      assertFalse(first.output().contains(owner.password()), "the password is printed");
      assertFalse(
          Files.readString(data.resolve("database.log")).contains(owner.password()),
          "the password is logged");
      String hash = FolderDatabase.sql(owner, "SELECT password_hash FROM users");
      assertTrue(hash.startsWith("pbkdf2-sha256$600000$"), "what tests hash quickly, it does not");
      FolderDatabase.sql(owner, "CREATE TABLE kept AS SELECT 1 AS jar");
      first.stop();
    }
  }

  /** Each run ends in another way and the next one finds what the first one wrote. */
  @Test
  void after_each_way_to_end() throws Exception {
    try (Program afterAnOrderlyEnd = startsAgain()) {
      afterAnOrderlyEnd.kill();
    }
    assertFalse(FolderDatabase.serversIn(data).isEmpty(), "an orphan is left behind");

    try (Program afterAKillThatLeftTheDatabaseRunning = startsAgain()) {
      afterAKillThatLeftTheDatabaseRunning.kill();
    }
    for (ProcessHandle server : FolderDatabase.serversIn(data)) {
      server.destroyForcibly();
    }

    try (Program afterAKillOfBoth = startsAgain()) {
      assertTrue(List.of(0, 143).contains(afterAKillOfBoth.stop()));
      assertEquals(
          List.of(), FolderDatabase.serversIn(data), "the database ends with the application");
      assertEquals(List.of(), afterAKillOfBoth.errors());
    }

    Files.writeString(
        data.resolve("database/postmaster.pid"),
        ProcessHandle.current().pid() + "\n" + data.resolve("database") + "\n");
    try (Program afterItsNumberWentToAnother = startsAgain()) {
      assertTrue(afterItsNumberWentToAnother.isAlive());
    }
  }

  /** Each try finds what the one before it left half done. */
  @Test
  void after_kills_in_the_middle_of_the_first_start(@TempDir Path fresh) throws Exception {
    List<String> halves = List.of("server-partial", "database.partial");
    for (String half : halves) {
      try (Program program = Program.run(Program.dataIn(fresh))) {
        Program.await(() -> Files.exists(fresh.resolve(half)));
        program.kill();
      }
      assertFalse(Files.exists(fresh.resolve("database")), "killed too late for this test");
    }

    try (Program program = Program.run(Program.dataIn(fresh)).awaitReady()) {
      halves.forEach(half -> assertFalse(Files.exists(fresh.resolve(half)), half));
      assertEquals(List.of(), program.errors());
    }
  }

  private static Program startsAgain() throws Exception {
    Program program = Program.start(Program.dataIn(data)).awaitReady();
    assertEquals("1", FolderDatabase.sql(FolderDatabase.ownerIn(data), COUNT));
    assertEquals(1, postmasters());
    assertEquals(List.of(), program.errors());
    return program;
  }

  /**
   * Servers whose parent is not a server of this folder themselves. A connection's process that
   * ends meanwhile has no parent any more, so whether it lives is asked after its parent.
   */
  private static long postmasters() throws IOException {
    List<ProcessHandle> servers = FolderDatabase.serversIn(data);
    return servers.stream()
        .filter(p -> p.parent().filter(servers::contains).isEmpty())
        .filter(ProcessHandle::isAlive)
        .count();
  }
}
