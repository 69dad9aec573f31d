package org.barreltally.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.Owner;
import org.barreltally.start.FolderDatabase;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several sugarhouses in one database, a schema and a role each: none sees another's book. */
class SchemaEachIT {

  private static final String PASSWORD = Program.PASSWORD;
  private static final List<String> LISTS =
      List.of("/api/stock?limit=500", "/api/barrels?limit=500", "/api/movements?limit=500");

  @TempDir Path folder;

  @Test
  void three_books_in_one_database_and_one_of_them_saved_and_brought_up_beside() throws Exception {
    Path first = folder.resolve("first");
    try (Program own = Program.start(Program.ownBook(first)).awaitReady();
        Program ridge = Program.start(sugarhouse(first, "ridge", true)).awaitReady();
        Program hollow = Program.start(sugarhouse(first, "hollow", false)).awaitReady()) {
      Program.await(() -> ridge.output().contains("Shrink in all"));
      for (String name : List.of("ridge", "hollow")) {
        FolderDatabase.letIn(first, name, PASSWORD);
      }
      taken(hollow, "H-1");
      taken(own, "O-1");
      Map<String, String> season = told(ridge, Program.LOGIN);
      assertEquals(List.of("H-1"), tags(hollow));
      assertEquals(List.of("O-1"), tags(own));
      assertTrue(tags(ridge).size() > 5, season::toString);

      no_role_reads_another_book(first);

      Path saved = folder.resolve("ridge.zip");
      command("Saved to", sugarhouse(first, "ridge", false), "backup", saved);
      command("Restored", sugarhouse(first, "orchard", false), "restore", saved);
      try (Program orchard = Program.start(sugarhouse(first, "orchard", false)).awaitReady()) {
        assertEquals(season, told(orchard, Program.loginByPassword()));
        taken(orchard, "R-1");
        assertEquals(List.of(), orchard.errors());
      }
      assertEquals(
          season, told(ridge, Program.LOGIN), "what is entered in the copy is not in the book");
      assertEquals(List.of("H-1"), tags(hollow));
      for (Program each : List.of(own, ridge, hollow)) {
        assertTrue(sound(each));
        assertEquals(List.of(), each.errors());
      }
    }
  }

  /** Neither by name nor by its own tables: the rights of a schema end at its edge. */
  private static void no_role_reads_another_book(Path server) {
    String query = "SELECT count(*) FROM hollow.items";
    for (boolean application : List.of(true, false)) {
      SQLException refused =
          assertThrows(
              SQLException.class,
              () -> FolderDatabase.askedAs(server, "ridge", PASSWORD, application, query));
      assertEquals("42501", refused.getSQLState(), refused.getMessage());
    }
  }

  /** The settings of a sugarhouse, whose role an administrator made. */
  private static Map<String, String> sugarhouse(Path server, String name, boolean demo)
      throws Exception {
    FolderDatabase.roleIn(server, name, PASSWORD);
    Map<String, String> settings = new HashMap<>(FolderDatabase.beside(server));
    settings.merge("BARRELTALLY_DB_URL", "?currentSchema=" + name, String::concat);
    settings.put("BARRELTALLY_DB_USER", name);
    settings.put("BARRELTALLY_DB_PASSWORD", PASSWORD);
    settings.put("BARRELTALLY_OWNER_PASSWORD", PASSWORD);
    settings.put("BARRELTALLY_DATA", server.resolveSibling(name).toString());
    settings.put("BARRELTALLY_DEMO", Boolean.toString(demo));
    settings.put("HTTPS_PORT", "off");
    return settings;
  }

  private static void command(String words, Map<String, String> settings, String command, Path file)
      throws Exception {
    try (Program program = Program.run(settings, command, file.toString())) {
      Program.await(() -> !program.isAlive());
      assertEquals(List.of(), program.errors());
      assertTrue(program.output().contains(words), program.output());
    }
  }

  private static void taken(Program program, String tag) throws Exception {
    String barrel = Owner.barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 70);
    copies(program).taken("/api/barrels", barrel.replace('\'', '"'));
  }

  private static Map<String, String> told(Program program, String login) throws Exception {
    Map<String, String> told = new TreeMap<>();
    for (String list : LISTS) {
      told.put(list, new Copies(List.of(program.port()), login).read(list).toString());
    }
    return told;
  }

  private static List<String> tags(Program program) throws Exception {
    return copies(program).read("/api/barrels?limit=500").get("items").findValuesAsText("tag");
  }

  private static boolean sound(Program program) throws Exception {
    JsonNode found = copies(program).read("/api/ledger/invariants");
    return found.findValues("violations").stream().allMatch(JsonNode::isEmpty);
  }

  private static Copies copies(Program program) {
    return new Copies(List.of(program.port()), Program.LOGIN);
  }
}
