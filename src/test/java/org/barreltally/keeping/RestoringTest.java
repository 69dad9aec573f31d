package org.barreltally.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Into what a backup may go, and from which versions it may come. */
@QuarkusTest
class RestoringTest {

  /** A barrel of 1 kg as an early version kept it. */
  private static final String EARLY_BOOK =
      """
      INSERT INTO users VALUES ('00000000-0000-7000-8000-000000000001', 'owner', 'Owner', 'h', 'owner', now());
      INSERT INTO lots VALUES ('S24-001', 'bulk', '2024-03-14', '{2024}', 66.9, 0.1, 'amber', 62, 'clean', false);
      INSERT INTO items VALUES ('00000000-0000-7000-8000-000000000002', 'S24-001', NULL, NULL, 'amber', false);
      INSERT INTO movements VALUES ('00000000-0000-7000-8000-000000000003', 'filling', '2024-03-14', '2024-03-15', 2024,
        '00000000-0000-7000-8000-000000000001', 'It''s "sweet", they say', NULL, 2);
      INSERT INTO balances VALUES ('boiled', '00000000-0000-7000-8000-000000000002', -1000, 1, true),
        ('barrel-room', '00000000-0000-7000-8000-000000000002', 1000, 1, false);
      INSERT INTO entries VALUES
        ('00000000-0000-7000-8000-000000000003', 1, 'boiled', '00000000-0000-7000-8000-000000000002', -1000, -1000, 1),
        ('00000000-0000-7000-8000-000000000003', 2, 'barrel-room', '00000000-0000-7000-8000-000000000002', 1000, 1000, 1);
      UPDATE places SET name = 'Stone cellar' WHERE code = 'cool-room';
      """;

  @TempDir Path folder;

  @Test
  void a_book_of_an_earlier_version_is_brought_up_to_this_one() throws Exception {
    Path file = folder.resolve("early.zip");
    Map<String, String> columns;
    Map<String, List<String>> before;
    try (EmptyDatabase early = EmptyDatabase.create().migratedTo("013")) {
      early.run(EARLY_BOOK);
      columns = early.columns();
      before = early.rows(columns);
      assertEquals("013", new Saving(early.owned()).save(file, Instant.now()).schemaVersion());
    }
    try (EmptyDatabase empty = EmptyDatabase.create()) {
      new Restoring(empty.owned()).restore(file);

      // Later versions add columns to these tables, and rows of their own to some.
      Map<String, List<String>> after = empty.rows(columns);
      before.forEach((table, rows) -> assertTrue(after.get(table).containsAll(rows), table));
      assertEquals(before.get("entries"), after.get("entries"));
      assertTrue(empty.columns().containsKey("supplies"), "tables that came later are there");
      assertEquals(SmallBook.newest(), empty.value(SmallBook.VERSION));
      RoundTripTest.assertSound(empty);
    }
  }

  @Test
  void a_closed_year_comes_back_closed_with_what_it_held() throws Exception {
    Path file = folder.resolve("closed.zip");
    Map<String, List<String>> before;
    try (EmptyDatabase closed = EmptyDatabase.create().migratedTo(SmallBook.newest())) {
      closed.run(
          EARLY_BOOK
              + "INSERT INTO closed_years SELECT book_year, id, now(), recorded_by FROM movements;"
              + "INSERT INTO closed_year_sums SELECT m.book_year, 1, count(*), sum(hashtextextended("
              + "concat_ws(' ', e.movement, e.line, e.place, e.item, e.amount), 0)) FROM movements m"
              + " JOIN entries e ON e.movement = m.id GROUP BY m.book_year;");
      before = closed.rows();
      new Saving(closed.owned()).save(file, Instant.now());
    }
    try (EmptyDatabase empty = EmptyDatabase.create()) {
      new Restoring(empty.owned()).restore(file);

      assertEquals(before.get("closed_years"), empty.rows().get("closed_years"));
      assertEquals(before.get("movements"), empty.rows().get("movements"));
      assertEquals("0", empty.value("SELECT count(*) FROM movements WHERE late"));
      RoundTripTest.assertSound(empty);
    }
  }

  @Test
  void what_is_in_the_way_of_an_installation_only_looked_at_goes() throws Exception {
    Path file = SmallBook.saved();
    try (EmptyDatabase looked = EmptyDatabase.create().migratedTo("032")) {
      looked.run(
          "INSERT INTO users VALUES (gen_random_uuid(), 'owner', 'Owner', 'h', 'owner', now());"
              + "INSERT INTO sessions SELECT sha256('x'), id, now(), now() FROM users;"
              + "CREATE SCHEMA public_restoring; CREATE TABLE public_restoring.left_behind (id int)");

      new Restoring(looked.owned()).restore(file);

      assertEquals(SmallBook.rows(), looked.rows());
      assertEquals(SmallBook.newest(), looked.value(SmallBook.VERSION));
      assertEquals("0", looked.value("SELECT count(*) FROM sessions"));
    }
  }

  @Test
  void an_installation_with_a_book_is_left_alone() throws Exception {
    refused(
        InstallationNotEmpty.class,
        "lots: 1, movements: 1",
        "INSERT INTO supplies (code, name, kind, recorded_at, recorded_by)"
            + " VALUES ('CAP', 'Caps', 'cap', now(), gen_random_uuid());"
            + EARLY_BOOK);
  }

  @Test
  void so_is_one_in_which_only_a_person_or_a_place_was_added() throws Exception {
    refused(
        InstallationNotEmpty.class,
        "users: 1",
        "INSERT INTO users SELECT gen_random_uuid(), n, 'N', 'h', 'owner', now() FROM (VALUES ('a'), ('b')) v (n)");
    refused(
        InstallationNotEmpty.class,
        "places: 1",
        "INSERT INTO places VALUES ('attic', 'Attic', 'home', false)");
  }

  @Test
  void so_is_a_database_with_tables_of_others() throws Exception {
    refused(InstallationNotEmpty.class, "diary", "CREATE TABLE diary (day date)");
    try (EmptyDatabase others = EmptyDatabase.create()) {
      others.run("CREATE TABLE diary (day date)");
      Path file = SmallBook.saved();
      assertThrows(InstallationNotEmpty.class, () -> new Restoring(others.owned()).restore(file));
    }
  }

  @Test
  void so_is_one_that_a_later_version_made() throws Exception {
    refused(
        InstallationTooNew.class,
        "999",
        "INSERT INTO flyway_schema_history SELECT 999, '999', 'from the future', type, script, checksum,"
            + " installed_by, installed_on, execution_time, success FROM flyway_schema_history WHERE installed_rank = 1");
  }

  @Test
  void nobody_may_be_signed_in_to_it() throws Exception {
    Path file = SmallBook.saved();
    try (EmptyDatabase empty = EmptyDatabase.create();
        Connection somebody = empty.owned().owner().getConnection()) {
      assertTrue(somebody.isValid(1));
      assertThrows(InstallationInUse.class, () -> new Restoring(empty.owned()).restore(file));
    }
  }

  private void refused(Class<? extends Refusal> rule, String words, String sql) throws Exception {
    Path file = SmallBook.saved();
    try (EmptyDatabase installation = EmptyDatabase.create().migratedTo(SmallBook.newest())) {
      installation.run(sql);
      Map<String, List<String>> before = installation.rows();
      Refusal refusal = assertThrows(rule, () -> new Restoring(installation.owned()).restore(file));
      assertTrue(refusal.detail().contains(words), refusal.detail());
      assertEquals(before, installation.rows());
    }
  }
}
