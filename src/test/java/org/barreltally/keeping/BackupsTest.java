package org.barreltally.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.barreltally.books.Books;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder, the second place, the schedule and what the start page says. */
@QuarkusTest
class BackupsTest {

  private static final int KEEP = 3;

  @Inject DataSource book;

  @TempDir Path parent;

  private final MovableClock clock = new MovableClock(Instant.parse("2124-06-20T21:05:00.123Z"));
  private Path folder;
  private Path second;
  private Backups backups;
  private BackupSchedule schedule;
  private BackupAge age;

  @BeforeEach
  void a_folder_and_a_second_place_that_is_not_plugged_in() {
    folder = parent.resolve("farm").resolve("backups");
    second = parent.resolve("stick");
    KeepingSettings settings =
        new KeepingSettings(
            folder, Optional.of(second), Duration.ofHours(24), KEEP, Duration.ofDays(7));
    backups = new Backups(EmptyDatabase::ofTheProgram, settings, Books.one(), clock);
    schedule = new BackupSchedule(backups, settings, Books.one(), clock);
    age = new BackupAge(backups, settings, book, clock);
  }

  @Test
  void each_has_its_checksum_beside_it_and_is_for_its_owner_only() throws Exception {
    Backup made = backups.make().backup();

    assertEquals("barreltally-21240620T210500123Z.zip", made.name());
    Path file = folder.resolve(made.name());
    assertEquals(
        made.sha256() + "  " + made.name() + "\n",
        Files.readString(folder.resolve(made.name() + ".sha256")));
    assertEquals(made.sha256(), Forged.sha256(Files.readAllBytes(file)));
    assertEquals(made.bytes(), Files.size(file));
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
    assertEquals(made, backups.list(null, 10).get(0).backup());
    assertEquals(clock.instant(), made.madeAt());
  }

  @Test
  void the_newest_are_kept_and_what_is_not_a_backup_stays() throws Exception {
    Files.createDirectories(second);
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("letter.zip"), "Dear sister,");
    for (int n = 0; n < KEEP + 2; n++) {
      backups.make();
      clock.move(Duration.ofDays(1));
    }

    List<String> kept = backups.list(null, 10).stream().map(k -> k.backup().name()).toList();
    assertEquals(
        List.of(
            "barreltally-21240624T210500123Z.zip",
            "barreltally-21240623T210500123Z.zip",
            "barreltally-21240622T210500123Z.zip"),
        kept);
    assertEquals(
        kept.subList(1, 3),
        backups.list(kept.get(0), 10).stream().map(k -> k.backup().name()).toList());
    assertEquals(2 * KEEP + 1, count(folder));
    assertEquals(2 * KEEP, count(second));
  }

  @Test
  void a_second_place_that_was_away_is_caught_up_with_and_never_made_on_the_wrong_disk()
      throws Exception {
    assertEquals(false, backups.make().atSecondPlace());
    assertFalse(Files.exists(second));
    assertTrue(age.warning().orElseThrow().contains("second place"));

    Files.createDirectories(second);
    schedule.look();

    assertEquals(Optional.empty(), age.warning());
    assertEquals(true, backups.list(null, 1).get(0).atSecondPlace());
    String name = backups.list(null, 1).get(0).backup().name();
    assertEquals(-1, Files.mismatch(folder.resolve(name), second.resolve(name)));
  }

  @Test
  void the_schedule_makes_one_when_the_last_is_old_enough() throws Exception {
    Files.createDirectories(second);
    schedule.look();
    assertEquals(1, backups.list(null, 10).size());
    clock.move(Duration.ofHours(23));
    schedule.look();
    assertEquals(1, backups.list(null, 10).size());
    clock.move(Duration.ofHours(1));
    schedule.look();
    assertEquals(2, backups.list(null, 10).size());
  }

  @Test
  void a_backup_that_a_wrong_clock_dated_into_the_future_does_not_stop_it() throws Exception {
    Files.createDirectories(second);
    clock.move(Duration.ofDays(4000));
    backups.make();
    clock.move(Duration.ofDays(-4000));
    assertEquals(Optional.empty(), backups.lastGood());
    schedule.look();
    assertEquals(Optional.of(clock.instant()), backups.lastGood());
  }

  @Test
  void the_start_page_is_told_when_the_last_good_one_is_old_or_there_never_was_one()
      throws Exception {
    Files.createDirectories(second);
    assertEquals("There is no backup of the book yet. Have one made.", age.warning().orElseThrow());
    backups.make();
    clock.move(Duration.ofDays(7));
    assertEquals(Optional.empty(), age.warning());
    clock.move(Duration.ofDays(2));
    assertEquals(
        "The last backup of the book is 9 days old. Have one made.", age.warning().orElseThrow());
    assertEquals(Optional.of(Duration.ofDays(9)), age.ofTheLast());
  }

  @Test
  void one_whose_checksum_was_never_written_does_not_count() throws Exception {
    String name = backups.make().backup().name();
    Files.delete(folder.resolve(name + ".sha256"));

    assertEquals(List.of(), backups.list(null, 10));
    assertEquals(Optional.empty(), backups.lastGood());
    assertThrows(UnknownBackup.class, () -> backups.file(name));
  }

  @Test
  void where_nothing_can_be_written_it_is_said_and_nothing_is_left() throws Exception {
    Files.createDirectories(folder.getParent());
    Files.writeString(folder, "a file in the place of the folder");

    assertThrows(BackupNotWritten.class, backups::make);
    schedule.look(); // logs and goes on
    assertEquals(1, count(folder.getParent()));
  }

  @Test
  void a_backup_whose_checksum_cannot_be_written_goes_again() throws Exception {
    Files.createDirectories(folder);
    Files.createDirectory(folder.resolve("barreltally-21240620T210500123Z.zip.sha256"));

    assertThrows(BackupNotWritten.class, backups::make);

    assertEquals(1, count(folder), "the backup without a checksum went again");
  }

  private static long count(Path folder) throws Exception {
    try (Stream<Path> found = Files.list(folder)) {
      return found.count();
    }
  }
}
