package org.barreltally.keeping.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.barreltally.keeping.BackupStrange;
import org.barreltally.keeping.BackupTooNew;
import org.barreltally.keeping.OwnedDatabase;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** The same migrations as at a start, run in one schema and as far as wanted. */
public final class Migrations {

  private final OwnedDatabase database;
  private final String schema;
  private List<MigrationVersion> known = List.of();

  public Migrations(OwnedDatabase database, String schema) {
    this.database = database;
    this.schema = schema;
  }

  /** Makes the tables as that version had them. */
  void to(String version) {
    flyway().target(MigrationVersion.fromVersion(version)).load().migrate();
  }

  /** Brings the tables, and what is in them, up to this version of the tool. */
  public void toNewest() {
    flyway().load().migrate();
  }

  /**
   * Asks whether the tables are those of this version of the tool.
   *
   * @throws org.flywaydb.core.api.FlywayException if they are not
   */
  public void mustBeNewest() {
    flyway().load().validate();
  }

  /** Whether a version of the tables is later than the newest that this tool knows. */
  boolean isLaterThanKnown(String version) {
    List<MigrationVersion> known = known();
    return MigrationVersion.fromVersion(version).isNewerThan(known.get(known.size() - 1));
  }

  /**
   * Checks that this tool can make the tables of a version.
   *
   * @throws BackupTooNew if it is later than the newest one known
   * @throws BackupStrange if no version of the tool ever had it
   */
  void mustKnow(String version) {
    List<MigrationVersion> known = known();
    if (isLaterThanKnown(version)) {
      throw new BackupTooNew(
          "version of the tables", version, known.get(known.size() - 1).getVersion());
    }
    if (!known.contains(MigrationVersion.fromVersion(version))) {
      throw new BackupStrange("tables of version " + version + ", which there never was");
    }
  }

  private List<MigrationVersion> known() {
    if (known.isEmpty()) {
      known =
          Arrays.stream(flyway().load().info().all())
              .map(MigrationInfo::getVersion)
              .filter(version -> version != null)
              .sorted()
              .toList();
    }
    return known;
  }

  private FluentConfiguration flyway() {
    return Flyway.configure(Migrations.class.getClassLoader())
        .dataSource(database.owner())
        .schemas(schema)
        .defaultSchema(schema)
        .createSchemas(false)
        .locations("classpath:db/migration")
        // they need not be on disk before the restore that asked for them is
        .initSql("SET TIME ZONE 'UTC'; SET synchronous_commit = off")
        .placeholders(Map.of("app_role", database.applicationRole()));
  }
}
