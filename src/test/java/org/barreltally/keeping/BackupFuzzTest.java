package org.barreltally.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * However a file is damaged, it is refused in plain words and nothing changes, or it is restored
 * and the database holds exactly what stands in it. Rounds follow from a seed, which is printed.
 */
@QuarkusTest
class BackupFuzzTest {

  private static final int ROUNDS =
      Integer.getInteger("barreltally.damages", Damage.values().length);
  private static final long SEED = Long.getLong("barreltally.seed", 20261126);

  @TempDir Path folder;

  private EmptyDatabase installation;
  private Map<String, List<String>> before;
  private final Map<Damage, Map<String, Integer>> verdicts = new EnumMap<>(Damage.class);

  @Test
  void a_damaged_file_is_refused_or_restored_exactly() throws Exception {
    System.out.println("damaged backups: seed " + SEED + ", " + ROUNDS + " rounds");
    Path good = folder.resolve("good.zip");
    try (EmptyDatabase book = EmptyDatabase.create().migratedTo(EarlyBook.VERSION)) {
      book.run(EarlyBook.sql(30));
      new Saving(book.owned()).save(good, Instant.now());
    }
    String version = EarlyBook.VERSION;
    try {
      anotherInstallation(version);
      for (int n = 0; n < ROUNDS; n++) {
        Random random = new Random(SEED + n);
        Damage damage = Damage.values()[n % Damage.values().length];
        String round = "seed " + SEED + ", round " + n + ", " + damage;
        Path file = damage.done(good, folder.resolve("damaged.zip"), random);
        if (restored(file, round)) {
          holdsWhatStandsIn(file, round);
          count(damage, "restored as it stands");
          anotherInstallation(version);
        } else {
          count(damage, "refused");
        }
      }
    } finally {
      installation.close();
    }
    verdicts.forEach(
        (damage, counts) -> System.out.println("damaged backups: " + damage + " " + counts));
    assertTrue(verdicts.values().stream().anyMatch(counts -> counts.containsKey("refused")));
  }

  private void anotherInstallation(String version) throws Exception {
    if (installation != null) {
      installation.close();
    }
    installation = EmptyDatabase.create().migratedTo(version);
    before = installation.rows();
  }

  /** False if it was refused as it should be. */
  private boolean restored(Path file, String round) throws Exception {
    try {
      new Restoring(installation.owned()).restore(file);
      return true;
    } catch (Refusal refusal) {
      assertFalse(refusal.detail().isBlank(), round);
      assertFalse(refusal.detail().contains("Exception"), round + ": " + refusal.detail());
      assertEquals(before, installation.rows(), round);
      assertEquals(
          "0",
          installation.value("SELECT count(*) FROM pg_namespace WHERE nspname ~ 'restoring'"),
          round);
      return false;
    } catch (Exception e) {
      throw new AssertionError(round, e);
    }
  }

  private void holdsWhatStandsIn(Path file, String round) throws Exception {
    Forged said = Forged.from(file);
    for (var table : said.manifest.get("tables")) {
      String name = table.get("name").asText();
      List<String> rows = SavedTable.rows(said, name);
      String columns = String.join(", ", SavedTable.columns(said, name));
      List<String> found =
          SavedTable.rows(installation, "SELECT " + columns + " FROM public." + name);
      if (name.equals("places")) {
        assertTrue(found.containsAll(rows), round + " " + name); // later versions add some
      } else {
        assertEquals(rows, found, round + " " + name);
      }
    }
    RoundTripTest.assertSound(installation);
  }

  private void count(Damage damage, String verdict) {
    verdicts.computeIfAbsent(damage, d -> new TreeMap<>()).merge(verdict, 1, Integer::sum);
  }
}
