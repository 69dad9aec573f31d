package org.barreltally.keeping.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Instant;
import java.util.List;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.keeping.EmptyDatabase;
import org.barreltally.keeping.OwnedDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of an invented orchard, with all that later migrations might bring. */
@QuarkusTest
class EveryKindOfValueTest {

  private static final String TABLES =
      """
      CREATE SCHEMA $S; SET search_path = $S;
      CREATE TABLE flyway_schema_history (version text, success boolean, installed_rank int);
      INSERT INTO flyway_schema_history VALUES ('1', true, 1);
      CREATE TABLE trees (
        id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY, grafted_on bigint REFERENCES trees,
        taps int, doubled int GENERATED ALWAYS AS (taps * 2) STORED, girth double precision,
        small real, weight numeric, leaf bytea, span interval, tags text[], said jsonb, raw json,
        seen timestamptz, at time, on_day date, tall boolean, code uuid, "order" text);
      CREATE TABLE buckets (tree bigint REFERENCES trees, note text);
      CREATE TABLE lids (id int PRIMARY KEY, pail int);
      CREATE TABLE pails (id int PRIMARY KEY, lid int REFERENCES lids);
      ALTER TABLE lids ADD FOREIGN KEY (pail) REFERENCES pails DEFERRABLE;
      CREATE SEQUENCE labels; CREATE SEQUENCE unused;
      """;

  private static final String ROWS =
      """
      SET search_path = orchard;
      INSERT INTO trees (id, grafted_on, taps, girth, small, weight, leaf, span, tags, said, raw, seen, at, on_day, tall, code, "order")
        OVERRIDING SYSTEM VALUE VALUES
        (7, 9, 3, 0.1, 0.1, 1.2300, '\\x00ff0d0a22', '1 year 2 mons -3 days 04:05:06.789', '{a,NULL,"b,\\"c"}',
         '{"b": 1, "a": [1.50, null]}', '{ "b" :1}', '2024-03-14 01:02:03.456789+05', '24:00', '0044-03-15 BC', true, gen_random_uuid(), E'a\\r\\nb'),
        (9, NULL, NULL, 'NaN', '-Infinity', 'NaN', '', '0', '{}', 'null', 'null', 'infinity', '00:00', 'infinity', false, NULL, ''),
        (11, 11, -1, -0.0, 1e-40, 1e100, NULL, NULL, NULL, '"x"', '"\\u00e9"', '-infinity', NULL, NULL, NULL, NULL, NULL),
        (12, NULL, 0, 4.9e-324, 3.4e38, 0.000, '\\x5c2e', '-1 mon', '{{1,2},{3,4}}', '[]', '[]', '0001-01-01 BC', '12:34:56.7', '9999-12-31', true, NULL, '\\.');
      INSERT INTO buckets VALUES (7, 'twice'), (7, 'twice'), (NULL, NULL), (9, '');
      INSERT INTO lids VALUES (1, NULL); INSERT INTO pails VALUES (1, 1); UPDATE lids SET pail = 1;
      SELECT setval('labels', 41);
      """;

  @TempDir Path folder;

  @Test
  void comes_back_as_it_was_in_whatever_order_rows_refer_to_each_other() throws Exception {
    try (EmptyDatabase database = EmptyDatabase.create()) {
      database.run(TABLES.replace("$S", "orchard") + ROWS);
      database.run(TABLES.replace("$S", "grove"));
      Path file = save(database.owned());

      load(database.owned(), file);

      for (String table : List.of("trees", "buckets", "lids", "pails")) {
        String all = "SELECT t::text FROM %s." + table + " t ORDER BY 1";
        assertEquals(
            EmptyDatabase.column(database.owned(), all.formatted("orchard")),
            EmptyDatabase.column(database.owned(), all.formatted("grove")));
      }
      assertEquals("42", database.value("SELECT nextval('grove.labels')"));
      assertEquals("1", database.value("SELECT nextval('grove.unused')"));
    }
  }

  @Test
  void is_a_table_that_another_reader_of_rfc_4180_understands() throws Exception {
    try (EmptyDatabase database = EmptyDatabase.create()) {
      database.run(TABLES.replace("$S", "orchard") + ROWS);
      try (ZipFile zip = new ZipFile(save(database.owned()).toFile())) {
        String csv =
            new String(
                zip.getInputStream(zip.getEntry("tables/trees.csv")).readAllBytes(),
                StandardCharsets.UTF_8);
        List<CSVRecord> rows =
            CSVParser.parse(csv, CSVFormat.RFC4180.builder().setHeader().get()).getRecords();

        assertEquals(4, rows.size());
        assertEquals("7", rows.get(0).get("id"));
        assertEquals("a\r\nb", rows.get(0).get("order"));
        assertEquals("{a,NULL,\"b,\\\"c\"}", rows.get(0).get("tags"));
        assertEquals("0.1", rows.get(0).get("girth"));
        assertEquals("2024-03-13 20:02:03.456789+00", rows.get(0).get("seen"));
        assertEquals("\\.", rows.get(3).get("order"));
      }
    }
  }

  @Test
  void tables_that_need_each_other_at_once_are_a_defect_that_is_named() throws Exception {
    try (EmptyDatabase database = EmptyDatabase.create()) {
      database.run(TABLES.replace("$S", "orchard").replace(" DEFERRABLE", ""));
      try (Connection connection = database.owned().owner().getConnection()) {
        IllegalStateException defect =
            assertThrows(
                IllegalStateException.class,
                () -> LoadOrder.of(Catalog.tables(connection, "orchard").values()));
        assertEquals("tables need each other in a circle: [lids, pails]", defect.getMessage());
      }
    }
  }

  @Test
  void the_books_own_tables_can_be_put_in_order() throws Exception {
    try (EmptyDatabase database = EmptyDatabase.create();
        Connection connection = database.owned().owner().getConnection()) {
      new Migrations(database.owned(), "public").toNewest();
      List<String> order =
          LoadOrder.of(Catalog.tables(connection, "public").values()).stream()
              .map(BookTable::name)
              .toList();
      assertEquals(order.size(), Catalog.tables(connection, "public").size());
      assertEquals(-1, Integer.signum(order.indexOf("balances") - order.indexOf("entries")));
    }
  }

  private Path save(OwnedDatabase database) throws Exception {
    Path file = folder.resolve("orchard.zip");
    try (WholeFile whole = WholeFile.begin(file);
        Connection connection = database.owner().getConnection()) {
      new BackupWriter("orchard", "An orchard", "1")
          .write(connection, Instant.EPOCH.plusSeconds(1_000_000_000), whole.stream());
      whole.finish();
      whole.keep();
    }
    return file;
  }

  private static void load(OwnedDatabase database, Path file) throws Exception {
    try (BackupFile backup = BackupFile.open(file);
        Connection connection = database.owner().getConnection()) {
      backup.verify();
      connection.setAutoCommit(false);
      new Loading(connection, "grove").load(backup);
      connection.commit();
    }
  }
}
