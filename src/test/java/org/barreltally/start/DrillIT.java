package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The drill: the invented season is saved by a call while the program runs, restored into an empty
 * installation by the command, and both books are compared table by table and list by list. What is
 * compared is read by SQL and over the interface, not by the code that saves and restores.
 */
class DrillIT {

  /** What the drill counts aloud, in SQL. */
  private static final Map<String, String> COUNTED =
      Map.of(
          "balances", "SELECT count(*) FROM balances",
          "entries", "SELECT count(*) FROM entries",
          "lots", "SELECT count(*) FROM lots",
          "orders", "SELECT count(*) FROM gift_orders",
          "sales", "SELECT count(*) FROM sales",
          "numbers of papers",
              "SELECT (SELECT count(*) FROM sale_papers) + (SELECT count(*) FROM lot_numbers)"
                  + " + (SELECT count(*) FROM sale_paper_numbers)");

  /** They tell of backups and of who asked or is signed in, not of the book. */
  private static final List<String> NOT_OF_THE_BOOK =
      List.of("/api/backups", "/api/entrance-log", "/api/me/sessions");

  /** Written by asking: who signed in; and what the drill's own signing in leaves behind. */
  private static final List<String> WRITTEN_BY_ASKING =
      List.of("sessions", "flyway_schema_history", "entrance_log");

  @TempDir Path parent;

  @Test
  void a_saved_season_comes_back_to_the_last_row() throws Exception {
    Path farm = parent.resolve("farm");
    Path restored = parent.resolve("restored");
    Path file = parent.resolve("season.zip");
    Map<String, String> rows;
    Map<String, String> counts;
    Map<String, String> told;
    try (Program program = Program.startSeason(Program.ownBook(farm)).awaitReady()) {
      EveryList lists = new EveryList(program.port(), Program.LOGIN);
      told = lists.told();
      rows = digests(FolderDatabase.ownerIn(farm));
      counts = counts(FolderDatabase.ownerIn(farm));
      long begun = System.nanoTime();
      HttpResponse<String> made = lists.post("/api/backups", "");
      say("backup by call", begun);
      assertEquals(201, made.statusCode(), made.body());
      String name = made.body().replaceFirst("(?s).*\"name\"\\s*:\\s*\"([^\"]+)\".*", "$1");
      Files.copy(farm.resolve("backups").resolve(name), file);
      assertEquals(rows, digests(FolderDatabase.ownerIn(farm)), "nothing was written meanwhile");
      program.stop();
    }

    long begun = System.nanoTime();
    try (Program command = Program.run(Program.dataIn(restored), "restore", file.toString())) {
      assertEquals(0, command.exitCode(), () -> command.output() + command.errors());
    }
    say("restore by command, database and JVM made anew", begun);

    comparedBySql(restored, rows, counts);
    comparedOverTheInterface(restored, told);
  }

  private void comparedBySql(Path restored, Map<String, String> rows, Map<String, String> counts)
      throws Exception {
    try (DataFolder folder = DataFolder.open(restored)) {
      EmbeddedServer server = new EmbeddedServer(folder);
      try {
        DatabaseLogin owner = server.start();
        assertEquals(rows, digests(owner));
        assertEquals(counts, counts(owner));
        counts.forEach((what, count) -> assertTrue(Long.parseLong(count) > 0, what));
        System.out.println("drill: " + rows.size() + " tables alike, with " + counts);
      } finally {
        server.stop();
      }
    }
  }

  private void comparedOverTheInterface(Path restored, Map<String, String> told) throws Exception {
    try (Program program = Program.start(Program.ownBook(restored)).awaitReady()) {
      Map<String, String> again = new EveryList(program.port(), Program.loginByPassword()).told();
      assertTrue(told.keySet().removeAll(NOT_OF_THE_BOOK));
      assertTrue(again.keySet().removeAll(NOT_OF_THE_BOOK));
      assertEquals(told.keySet(), again.keySet());
      List<String> unlike =
          told.keySet().stream()
              .filter(path -> !timeless(told.get(path)).equals(timeless(again.get(path))))
              .map(path -> path + "\n  " + told.get(path) + "\n  " + again.get(path))
              .toList();
      assertEquals(List.of(), unlike);
      assertTrue(told.size() >= 40, "answers compared: " + told.keySet());
      System.out.println("drill: " + told.size() + " answers of the interface alike");
    }
  }

  /** Without the moment at which it was answered. */
  private static String timeless(String answer) {
    return answer.replaceAll("\"now\":\"[^\"]*\"", "\"now\"");
  }

  /** SHA-256 over every row as text, in the order of that text, by table. */
  private static Map<String, String> digests(DatabaseLogin owner) throws Exception {
    Map<String, String> digests = new TreeMap<>();
    try (Connection connection = owner.connect()) {
      for (String table :
          column(
              connection,
              "SELECT tablename FROM pg_tables WHERE schemaname = current_schema() ORDER BY 1")) {
        if (!WRITTEN_BY_ASKING.contains(table)) {
          MessageDigest digest = MessageDigest.getInstance("SHA-256");
          List<String> rows =
              column(connection, "SELECT t::text FROM %s t ORDER BY 1".formatted(table));
          for (String row : rows) {
            digest.update((row + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8));
          }
          digests.put(
              table, rows.size() + " rows " + HexFormat.of().formatHex(digest.digest(), 0, 8));
        }
      }
    }
    return digests;
  }

  private static Map<String, String> counts(DatabaseLogin owner) throws SQLException {
    Map<String, String> counts = new TreeMap<>();
    for (Map.Entry<String, String> each : COUNTED.entrySet()) {
      counts.put(each.getKey(), FolderDatabase.sql(owner, each.getValue()));
    }
    return counts;
  }

  private static List<String> column(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      List<String> values = new ArrayList<>();
      while (rows.next()) {
        values.add(rows.getString(1));
      }
      return values;
    }
  }

  private static void say(String what, long begun) {
    System.out.printf("drill: %s %.2f s%n", what, (System.nanoTime() - begun) / 1e9);
  }
}
