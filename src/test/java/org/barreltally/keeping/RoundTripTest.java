package org.barreltally.keeping;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.barreltally.Owner;
import org.barreltally.ledger.InvariantQuestions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is restored is what was saved: every table, row for row. */
@QuarkusTest
class RoundTripTest {

  @TempDir Path folder;

  @Test
  void every_row_of_every_table_comes_back() throws Exception {
    PlayedBook.play();
    PlayedBook.strangeNames(EmptyDatabase.ofTheProgram());
    Map<String, List<String>> before = EmptyDatabase.rows(EmptyDatabase.ofTheProgram());
    assertFilled(before, "lots", "movements", "entries", "balances", "barrel_readings", "fillings");
    assertFilled(
        before, "canning_runs", "suppliers", "supplies", "bulk_sales", "users", "requests");

    Path file = folder.resolve("book.zip");
    Backup saved = new Saving(EmptyDatabase.ofTheProgram()).save(file, Instant.now());

    try (EmptyDatabase empty = EmptyDatabase.create()) {
      Manifest restored = new Restoring(empty.owned()).restore(file);

      assertEquals(before, empty.rows());
      assertEquals(before.keySet().size(), saved.tables().size());
      assertEquals(before.values().stream().mapToLong(List::size).sum(), restored.rows());
      assertSound(empty);
      assertEquals("0", empty.value("SELECT count(*) FROM sessions"), "nobody is signed in");
    }
  }

  @Test
  void the_restored_installation_works_as_one_that_was_never_away() throws Exception {
    Path file = folder.resolve("book.zip");
    new Saving(EmptyDatabase.ofTheProgram()).save(file, Instant.now());
    try (EmptyDatabase empty = EmptyDatabase.create()) {
      new Restoring(empty.owned()).restore(file);

      assertEquals(grants(EmptyDatabase.ofTheProgram()), grants(empty.owned()));
      assertEquals(shape(EmptyDatabase.ofTheProgram()), shape(empty.owned()));
      assertEquals(
          "0", empty.value("SELECT count(*) FROM pg_namespace WHERE nspname ~ 'restoring'"));
      SQLException refused =
          assertThrows(SQLException.class, () -> empty.run("DELETE FROM movements"));
      assertTrue(refused.getMessage().contains("reverse it and enter it anew"));
    }
  }

  @Test
  void a_backup_of_a_restored_book_is_the_same_to_the_byte() throws Exception {
    Path first = folder.resolve("first.zip");
    Path second = folder.resolve("second.zip");
    new Saving(EmptyDatabase.ofTheProgram()).save(first, Instant.now());
    try (EmptyDatabase empty = EmptyDatabase.create()) {
      Manifest restored = new Restoring(empty.owned()).restore(first);
      new Saving(empty.owned()).save(second, Instant.now());

      assertEquals(restored.tables(), Restoring.look(second).tables());
    }
  }

  private static void assertFilled(Map<String, List<String>> rows, String... tables) {
    for (String table : tables) {
      assertFalse(rows.get(table).isEmpty(), table);
    }
  }

  static void assertSound(EmptyDatabase database) throws SQLException {
    try (Connection connection = database.owned().owner().getConnection()) {
      InvariantQuestions.ask(connection)
          .forEach(found -> assertEquals(List.of(), found.violations(), found.name()));
    }
  }

  private static List<String> grants(OwnedDatabase database) throws SQLException {
    return EmptyDatabase.column(
        database,
        """
        SELECT relname || ' ' || coalesce(relacl::text, '') || ' '
          || coalesce((SELECT string_agg(attname || attacl::text, ' ' ORDER BY attname)
                       FROM pg_attribute WHERE attrelid = c.oid AND attacl IS NOT NULL), '')
        FROM pg_class c WHERE relnamespace = 'public'::regnamespace ORDER BY relname
        """);
  }

  /** Constraints, indexes, triggers and functions. */
  private static List<String> shape(OwnedDatabase database) throws SQLException {
    return EmptyDatabase.column(
        database,
        """
        SELECT conname || ' ' || pg_get_constraintdef(oid) FROM pg_constraint
          WHERE connamespace = 'public'::regnamespace
        UNION ALL SELECT indexdef FROM pg_indexes WHERE schemaname = 'public'
        UNION ALL SELECT pg_get_triggerdef(t.oid) || t.tgenabled::text FROM pg_trigger t
          JOIN pg_class c ON c.oid = t.tgrelid
          WHERE NOT tgisinternal AND c.relnamespace = 'public'::regnamespace
        UNION ALL SELECT pg_get_functiondef(oid) FROM pg_proc WHERE pronamespace = 'public'::regnamespace
        ORDER BY 1
        """);
  }

  @Test
  void the_owner_makes_lists_and_fetches_backups_over_the_interface() throws Exception {
    String name = Owner.asks().post("/api/backups").then().statusCode(201).extract().path("name");
    Owner.reads("/api/backups").body("items[0].name", equalTo(name));
    Path fetched = folder.resolve(name);
    Files.write(fetched, Owner.reads("/api/backups/" + name).extract().asByteArray());
    try (EmptyDatabase empty = EmptyDatabase.create()) {
      new Restoring(empty.owned()).restore(fetched);
      assertSound(empty);
    }
  }
}
