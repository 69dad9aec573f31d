package org.barreltally.keeping;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * A book of some dozens of barrels in the newest tables and a backup of it, made once for all tests
 * that need any book.
 */
final class SmallBook {

  /** Asks a database for the version of its tables. */
  static final String VERSION =
      "SELECT version FROM flyway_schema_history ORDER BY installed_rank DESC LIMIT 1";

  private static SmallBook made;

  private final Path file;
  private final Map<String, List<String>> rows;

  private SmallBook(Path file, Map<String, List<String>> rows) {
    this.file = file;
    this.rows = rows;
  }

  private static synchronized SmallBook made() throws Exception {
    if (made == null) {
      Path file = Files.createTempDirectory("kept").resolve("good.zip");
      try (EmptyDatabase book = EmptyDatabase.create().migratedTo(EarlyBook.VERSION)) {
        book.run(EarlyBook.sql(30));
        book.migratedTo(newest());
        new Saving(book.owned()).save(file, Instant.now());
        made = new SmallBook(file, book.rows());
      }
    }
    return made;
  }

  /** The backup; to be read only. */
  static Path saved() throws Exception {
    return made().file;
  }

  /** Every row of it, as {@link EmptyDatabase#rows()} gives them. */
  static Map<String, List<String>> rows() throws Exception {
    return made().rows;
  }

  /** The newest version of the tables. */
  static String newest() throws Exception {
    return EmptyDatabase.column(EmptyDatabase.ofTheProgram(), VERSION).get(0);
  }
}
