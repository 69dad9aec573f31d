package org.barreltally.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Books and files of earlier versions come up to this one with all they held. The files under
 * {@code src/test/resources/early} hold the invented season as programs of those versions stored
 * it; {@code season-v060.zip} was also written by that program.
 */
@QuarkusTest
class EarlierVersionsTest {

  /** How many barrels the full book has; 300,000 make some 2,000,000 entries. */
  private static final int BARRELS = Integer.getInteger("barreltally.barrels", 1500);

  /** Every how manieth version a file is made at. */
  private static final int EVERY = Integer.getInteger("barreltally.versions.every", 9);

  @TempDir Path folder;

  @Test
  void a_full_book_of_the_first_version_is_migrated_with_every_sum_as_it_was() throws Exception {
    try (EmptyDatabase book = EmptyDatabase.create().migratedTo(EarlyBook.VERSION)) {
      book.run(EarlyBook.sql(BARRELS));
      Map<String, String> columns = book.columns();
      Map<String, List<String>> rows = book.rows(columns);
      Map<String, List<String>> sums = EarlyBook.sums(book.owned());

      long begun = System.nanoTime();
      book.migratedTo(newest());
      System.out.printf(
          "early book: %d entries migrated from %s to %s in %.1f s%n",
          rows.get("entries").size(),
          EarlyBook.VERSION,
          newest(),
          (System.nanoTime() - begun) / 1e9);

      assertEquals(sums, EarlyBook.sums(book.owned()));
      assertKept(rows, book.rows(columns));
      RoundTripTest.assertSound(book);
    }
  }

  @Test
  void a_file_of_any_earlier_version_is_restored_with_every_row() throws Exception {
    List<String> versions = versions();
    List<String> tried = new ArrayList<>();
    try (EmptyDatabase book = EmptyDatabase.create().migratedTo(EarlyBook.VERSION)) {
      book.run(EarlyBook.sql(60));
      for (int n = versions.indexOf(EarlyBook.VERSION); n < versions.size(); n += EVERY) {
        String version = versions.get(n);
        book.migratedTo(version);
        Path file = folder.resolve(version + ".zip");
        assertEquals(version, new Saving(book.owned()).save(file, Instant.now()).schemaVersion());
        comesBack(file, book);
        tried.add(version);
      }
    }
    System.out.println("early files restored: versions " + tried);
    assertTrue(tried.size() >= 3, "versions tried: " + tried);
  }

  private static void comesBack(Path file, EmptyDatabase book) throws Exception {
    Map<String, String> columns = book.columns();
    columns.values().removeIf(list -> list.contains("standing,")); // a column that came and went
    try (EmptyDatabase empty = EmptyDatabase.create()) {
      new Restoring(empty.owned()).restore(file);
      assertKept(book.rows(columns), empty.rows(columns));
      assertEquals(EarlyBook.sums(book.owned()), EarlyBook.sums(empty.owned()));
      assertEquals(newest(), empty.value(VERSION));
      RoundTripTest.assertSound(empty);
    }
  }

  @Test
  void files_of_earlier_programs_come_back() throws Exception {
    for (String name : List.of("season-v060.zip")) {
      Path file = folder.resolve(name);
      Files.copy(getClass().getResourceAsStream("/early/" + name), file);
      Forged said = Forged.from(file);
      try (EmptyDatabase empty = EmptyDatabase.create()) {
        Manifest restored = new Restoring(empty.owned()).restore(file);
        assertEquals(name.substring(8, 11), restored.schemaVersion());
        for (String table : List.of("entries", "movements", "lots", "balances", "canning_runs")) {
          // entries of the CSV, column by column, without this tool
          String columns = String.join(", ", SavedTable.columns(said, table));
          assertEquals(
              SavedTable.rows(said, table),
              SavedTable.rows(empty, "SELECT " + columns + " FROM " + table),
              name + " " + table);
        }
        RoundTripTest.assertSound(empty);
      }
    }
  }

  /** Later versions add rows of their own to places alone. */
  private static void assertKept(
      Map<String, List<String>> before, Map<String, List<String>> after) {
    before.forEach(
        (table, rows) -> {
          if (table.equals("places")) {
            assertTrue(after.get(table).containsAll(rows), table);
          } else {
            assertEquals(rows, after.get(table), table);
          }
        });
  }

  private static final String VERSION =
      "SELECT version FROM flyway_schema_history ORDER BY installed_rank DESC LIMIT 1";

  private static List<String> versions() throws Exception {
    return EmptyDatabase.column(
        EmptyDatabase.ofTheProgram(),
        "SELECT version FROM flyway_schema_history WHERE version IS NOT NULL ORDER BY version");
  }

  private static String newest() throws Exception {
    return versions().get(versions().size() - 1);
  }
}
