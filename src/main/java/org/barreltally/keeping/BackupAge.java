package org.barreltally.keeping;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import javax.sql.DataSource;

/** How old the last good backup is, and what to say when it is old. */
@ApplicationScoped
public class BackupAge {

  private static final String BEGUN = "SELECT min(created_at) FROM users";

  private final Backups backups;
  private final KeepingSettings settings;
  private final DataSource book;
  private final Clock clock;

  /** Of these backups; the book tells when the installation was begun. */
  public BackupAge(Backups backups, KeepingSettings settings, DataSource book, Clock clock) {
    this.backups = backups;
    this.settings = settings;
    this.book = book;
    this.clock = clock;
  }

  /** The age of the last good backup; empty if there is none. */
  public Optional<Duration> ofTheLast() {
    return backups.lastGood().map(made -> Duration.between(made, clock.instant()));
  }

  /** One sentence for the start page; empty while the last backup is young and where it belongs. */
  public Optional<String> warning() {
    Optional<Duration> age = ofTheLast();
    if (age.isEmpty()) {
      return isOld(sinceTheBeginning())
          ? Optional.of("There is no backup of the book yet. Have one made.")
          : Optional.empty();
    }
    if (isOld(age.get())) {
      return Optional.of(
          "The last backup of the book is %d days old. Have one made."
              .formatted(age.get().toDays()));
    }
    return backups.lastIsAtSecondPlace()
        ? Optional.empty()
        : Optional.of(
            "The last backup could not be copied to the second place. See that its folder can be written.");
  }

  private boolean isOld(Duration age) {
    return age.compareTo(settings.warnAfter()) > 0;
  }

  private Duration sinceTheBeginning() {
    try (Connection connection = book.getConnection();
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(BEGUN)) {
      rows.next();
      OffsetDateTime begun = rows.getObject(1, OffsetDateTime.class);
      Instant now = clock.instant();
      return begun == null ? Duration.ZERO : Duration.between(begun.toInstant(), now);
    } catch (SQLException e) {
      throw new IllegalStateException("the first user cannot be read", e);
    }
  }
}
