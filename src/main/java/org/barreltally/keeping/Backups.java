package org.barreltally.keeping;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;
import org.barreltally.keeping.internal.BackupFile;
import org.barreltally.keeping.internal.BackupFolder;
import org.barreltally.keeping.internal.BackupPlaces;
import org.barreltally.keeping.internal.WholeFile;
import org.barreltally.refusal.Refusal;
import org.jboss.logging.Logger;

/** The backups of the book at hand: makes them, keeps the newest, tells of them. */
@ApplicationScoped
public class Backups {

  private static final Logger LOG = Logger.getLogger(Backups.class);

  /** By then no program works on an unfinished file any more. */
  private static final Duration UNFINISHED = Duration.ofDays(1);

  private final KeepingSettings settings;
  private final Clock clock;
  private final OfEachBook<BackupPlaces> places;

  /** Of the book at hand, kept as set. */
  @Inject
  public Backups(BookDatabases databases, KeepingSettings settings, Books books, Clock clock) {
    this.settings = settings;
    this.clock = clock;
    this.places = books.keeping(() -> BackupPlaces.of(databases.here(), settings.of(books.here())));
  }

  /**
   * Makes one now, copies it to the second place and removes what is older than the newest that are
   * kept. A second place that cannot be written does not undo it.
   *
   * @throws BackupUnderWay if this program makes one already
   * @throws BackupNotWritten if the system does not let it be written
   */
  public Kept make() {
    BackupPlaces here = places.here();
    if (!here.making().tryLock()) {
      throw new BackupUnderWay();
    }
    BackupFolder folder = here.folder();
    try {
      Instant now = clock.instant();
      String name = BackupFolder.name(now);
      Backup made = here.saving().save(folder.path(name), now);
      folder.confirm(name, made.sha256());
      folder.keepNewest(settings.keep(), now.minus(UNFINISHED));
      bringToSecondPlace();
      return new Kept(made, atSecondPlace(name));
    } catch (IOException e) {
      throw new BackupNotWritten(WholeFile.reason(e));
    } catch (SQLException e) {
      throw new IllegalStateException("the database failed during a backup", e);
    } finally {
      here.making().unlock();
    }
  }

  /**
   * Copies to the second place what is not there yet, as after a stick was pulled for some days. If
   * that cannot be done it is logged, and the start page tells.
   */
  void bringToSecondPlace() {
    BackupFolder folder = places.here().folder();
    places
        .here()
        .secondPlace()
        .ifPresent(
            second -> {
              try {
                for (String name : folder.names()) {
                  if (second.file(name).isEmpty()) {
                    second.copy(folder, name);
                  }
                }
                second.keepNewest(settings.keep(), clock.instant().minus(UNFINISHED));
              } catch (IOException e) {
                LOG.warnf(
                    "The second place has no copy of the last backup: %s", WholeFile.reason(e));
              }
            });
  }

  /**
   * Those there are, the newest first.
   *
   * @param after the name after which to go on; null for the beginning
   */
  public List<Kept> list(String after, int most) {
    List<Kept> found = new ArrayList<>();
    for (String name : names()) {
      if (found.size() < most && (after == null || name.compareTo(after) < 0)) {
        read(name).ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<Kept> read(String name) {
    BackupFolder folder = places.here().folder();
    Path path = folder.path(name);
    try (BackupFile file = BackupFile.open(path)) {
      return Optional.of(
          new Kept(
              Backup.of(name, Files.size(path), folder.sha256(name), file.manifest()),
              atSecondPlace(name)));
    } catch (IOException | Refusal e) {
      LOG.warnf("The backup %s cannot be read: %s", name, e.getMessage());
      return Optional.empty();
    }
  }

  /** Whether a backup lies at the second place, too; null where none is set. */
  private Boolean atSecondPlace(String name) {
    return places.here().secondPlace().map(second -> second.file(name).isPresent()).orElse(null);
  }

  /**
   * The file of a backup.
   *
   * @throws UnknownBackup if there is none of this name
   */
  public Path file(String name) {
    return places.here().folder().file(name).orElseThrow(() -> new UnknownBackup(name));
  }

  /**
   * When the last one was made that was written whole and read again; empty if there is none. One
   * that a wrong clock dated into the future does not count.
   */
  public Optional<Instant> lastGood() {
    return lastName().map(BackupFolder::madeAt);
  }

  /** Whether the last one lies at the second place as well, or none is set. */
  public boolean lastIsAtSecondPlace() {
    return lastName().map(this::atSecondPlace).orElse(Boolean.TRUE);
  }

  private Optional<String> lastName() {
    Instant now = clock.instant();
    return names().stream().filter(name -> !BackupFolder.madeAt(name).isAfter(now)).findFirst();
  }

  private List<String> names() {
    try {
      return places.here().folder().names();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
