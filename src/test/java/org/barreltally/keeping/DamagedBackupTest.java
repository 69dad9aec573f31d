package org.barreltally.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every way in which a file can be wrong is refused by name, and changes nothing. */
@QuarkusTest
class DamagedBackupTest {

  private static final long SEED = 20260620;
  private static final int CHANGES = Integer.getInteger("barreltally.changes", 250);

  private static Path good;

  @TempDir Path folder;

  private static EmptyDatabase installation;
  private static Map<String, List<String>> before;

  private interface Forging {
    Path in(Path folder) throws IOException;
  }

  private interface Change {
    void on(Forged backup);
  }

  @BeforeEach
  void an_installation_that_was_started_once() throws Exception {
    if (good == null) {
      good = SmallBook.saved();
      installation = EmptyDatabase.create().migratedTo(SmallBook.newest());
      before = installation.rows();
    }
  }

  @AfterAll
  static void drop() throws Exception {
    installation.close();
  }

  static Stream<Arguments> wrongFiles() {
    return Stream.of(
        file("nothing there", NotABackup.class, "no such file", f -> f.resolve("none.zip")),
        file("a folder", NotABackup.class, "no such file", f -> f),
        file("empty", NotABackup.class, "no zip", f -> text(f, "")),
        file("a letter", NotABackup.class, "no zip", f -> text(f, "Dear sister,")),
        file("only a beginning", BackupDamaged.class, "cut short", f -> text(f, "PK\u0003\u0004")),
        file("cut short", BackupDamaged.class, "cut short", f -> cut(f, 2)),
        file("its last byte lost", BackupDamaged.class, "cut short", f -> cut(f, 1)),
        file("no manifest", NotABackup.class, "no manifest.json", f -> forged(f, (byte[]) null)),
        file("a manifest of prose", BackupDamaged.class, "manifest", f -> forged(f, "{ maple")),
        file("an empty manifest", NotABackup.class, "another format", f -> forged(f, "{}")),
        file("a manifest of null", NotABackup.class, "another format", f -> forged(f, "null")),
        file("deep nests", BackupDamaged.class, "manifest", f -> forged(f, "[".repeat(99_999))),
        file(
            "a long manifest",
            BackupUnreasonable.class,
            "manifest",
            f -> forged(f, " ".repeat(1_000_001))));
  }

  static Stream<Arguments> wrongManifests() {
    return Stream.of(
        change("another format", NotABackup.class, b -> b.manifest.put("format", "diary")),
        change("a newer format", BackupTooNew.class, b -> b.manifest.put("formatVersion", 2)),
        change("no version", BackupDamaged.class, b -> b.manifest.remove("formatVersion")),
        change("newer tables", BackupTooNew.class, b -> b.manifest.put("schemaVersion", "999")),
        change(
            "tables of no version", BackupStrange.class, b -> b.manifest.put("schemaVersion", "3")),
        change("SQL", BackupDamaged.class, b -> b.manifest.put("schemaVersion", "1; DROP")),
        change("no tables", BackupDamaged.class, b -> b.manifest.putNull("tables")),
        change("no date", BackupDamaged.class, b -> b.manifest.remove("madeAt")),
        change("a wrong date", BackupDamaged.class, b -> b.manifest.put("madeAt", "yesterday")),
        change("an unknown word", BackupDamaged.class, b -> b.manifest.put("extra", 1)),
        change("a wrong name", BackupDamaged.class, b -> b.table("lots").put("name", "lots\"; --")),
        change("a table twice", BackupDamaged.class, b -> b.table("lots").put("name", "items")),
        change("no columns", BackupDamaged.class, b -> b.table("lots").putArray("columns")),
        change("more rows", BackupDamaged.class, b -> b.table("lots").put("rows", 99_999)),
        change("fewer bytes", BackupDamaged.class, b -> b.table("lots").put("bytes", 10)),
        change("huge", BackupUnreasonable.class, b -> b.table("lots").put("bytes", 1L << 40)),
        change("a bomb", BackupUnreasonable.class, DamagedBackupTest::bomb),
        change("many files", BackupUnreasonable.class, DamagedBackupTest::manyFiles),
        change("an unknown counter", BackupStrange.class, DamagedBackupTest::counter));
  }

  static Stream<Arguments> wrongTables() {
    return Stream.of(
        change(
            "a changed cell",
            BackupDamaged.class,
            b -> b.change("places", t -> t.replace("Cool", "Warm"))),
        change(
            "a lost row",
            BackupDamaged.class,
            b -> b.change("places", DamagedBackupTest::withoutLast)),
        change("a lost file", BackupDamaged.class, b -> b.entries.remove("tables/lots.csv")),
        change("a lost table", BackupDamaged.class, b -> b.remove("lot_holds")),
        change("a table of others", BackupStrange.class, b -> b.add("diary")),
        change("the migrations", BackupStrange.class, b -> b.add("flyway_schema_history")),
        change("another file", BackupStrange.class, b -> b.entries.put("readme.txt", new byte[1])),
        change(
            "a path outside", BackupStrange.class, b -> b.entries.put("../../etc/x", new byte[1])),
        change("another column", BackupStrange.class, DamagedBackupTest::renamedColumn),
        change(
            "no header",
            BackupDamaged.class,
            b -> b.changeAndSign("places", t -> t.substring(t.indexOf('\n') + 1))),
        change(
            "letters for a number",
            BackupDamaged.class,
            b -> b.changeAndSign("balances", t -> t.replaceFirst("(\r\n[^,]*,[^,]*,)", "$1x"))),
        change(
            "an orphan",
            BackupDamaged.class,
            b -> b.changeAndSign("lots", DamagedBackupTest::withoutLast)),
        change(
            "a row twice",
            BackupDamaged.class,
            b -> b.changeAndSign("places", t -> t + t.substring(t.indexOf('\n') + 1))),
        change(
            "grams from nowhere",
            BookNotSound.class,
            b -> b.changeAndSign("balances", DamagedBackupTest::moreByAThousand)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrongFiles")
  void a_file_that_is_no_backup_is_refused(
      String what, Class<? extends Refusal> rule, String words, Forging forging) throws Exception {
    Refusal refusal = refused(rule, forging.in(folder));
    assertTrue(refusal.detail().contains(words), refusal.detail());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrongManifests")
  void a_manifest_that_cannot_be_is_refused(
      String what, Class<? extends Refusal> rule, Change change) throws Exception {
    refused(rule, changed(change));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrongTables")
  void a_table_that_is_not_what_was_saved_is_refused(
      String what, Class<? extends Refusal> rule, Change change) throws Exception {
    refused(rule, changed(change));
  }

  @Test
  void whatever_byte_is_changed_the_file_is_refused_or_nothing_of_the_book_was_touched()
      throws Exception {
    Random random = new Random(SEED);
    byte[] whole = Files.readAllBytes(good);
    Manifest intact = Restoring.look(good);
    int refused = 0;
    for (int n = 0; n < CHANGES; n++) {
      byte[] changed = whole.clone();
      changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
      try {
        Manifest read = Restoring.verified(Files.write(folder.resolve("flipped.zip"), changed));
        assertEquals(intact, read, "seed " + SEED + ", change " + n);
      } catch (Refusal expected) {
        refused++;
      }
    }
    assertTrue(
        refused > CHANGES * 3 / 5,
        "refused: "
            + refused); // the rest fell on dates and other words of the zip that say nothing
  }

  private Refusal refused(Class<? extends Refusal> rule, Path file) throws Exception {
    Refusal refusal =
        assertThrows(Refusal.class, () -> new Restoring(installation.owned()).restore(file));
    assertInstanceOf(rule, refusal, refusal.detail());
    assertEquals(before, installation.rows());
    assertEquals(
        "0", installation.value("SELECT count(*) FROM pg_namespace WHERE nspname ~ 'restoring'"));
    return refusal;
  }

  private Path changed(Change change) throws IOException {
    Forged backup = Forged.from(good);
    change.on(backup);
    return backup.write(folder.resolve("changed.zip"));
  }

  private static void bomb(Forged backup) {
    byte[] zeros = new byte[160 << 20];
    backup.entries.put("tables/lots.csv", zeros);
    backup.table("lots").put("bytes", zeros.length).put("sha256", Forged.sha256(zeros));
  }

  private static void manyFiles(Forged backup) {
    for (int n = 0; n < 1001; n++) {
      backup.entries.put("tables/t" + n + ".csv", new byte[0]);
    }
  }

  private static void counter(Forged backup) {
    backup.manifest.putArray("sequences").addObject().put("name", "bottles").put("last", 7);
  }

  private static void renamedColumn(Forged backup) {
    backup.changeAndSign("places", t -> t.replaceFirst("below_zero", "below_nil"));
    backup.table("places").putArray("columns").add("code").add("name").add("kind").add("below_nil");
  }

  private static String withoutLast(String csv) {
    return csv.substring(0, csv.lastIndexOf("\r\n", csv.length() - 3) + 2);
  }

  /** The first balance of the table: place, item, amount, … */
  private static String moreByAThousand(String csv) {
    String[] lines = csv.split("\r\n");
    String[] cells = lines[1].split(",", -1);
    cells[2] = Long.toString(Long.parseLong(cells[2]) + 1000);
    lines[1] = String.join(",", cells);
    return String.join("\r\n", Arrays.asList(lines)) + "\r\n";
  }

  private static Path text(Path folder, String text) throws IOException {
    return Files.writeString(folder.resolve("text.zip"), text);
  }

  private static Path cut(Path folder, int part) throws IOException {
    byte[] whole = Files.readAllBytes(good);
    int length = part == 1 ? whole.length - 1 : whole.length / part;
    return Files.write(folder.resolve("cut.zip"), Arrays.copyOf(whole, length));
  }

  private static Path forged(Path folder, String manifest) throws IOException {
    return forged(folder, manifest.getBytes(StandardCharsets.UTF_8));
  }

  private static Path forged(Path folder, byte[] manifest) throws IOException {
    return Forged.from(good).write(folder.resolve("forged.zip"), manifest);
  }

  private static Arguments file(
      String what, Class<? extends Refusal> rule, String words, Forging forging) {
    return Arguments.of(what, rule, words, forging);
  }

  private static Arguments change(String what, Class<? extends Refusal> rule, Change change) {
    return Arguments.of(what, rule, change);
  }
}
