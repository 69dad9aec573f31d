package org.barreltally.keeping.internal;

import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.Optional;
import org.barreltally.keeping.InstallationInUse;
import org.barreltally.keeping.InstallationTooNew;
import org.barreltally.keeping.OwnedDatabase;

/**
 * A schema beside the book's own, in which a backup is unpacked and brought up to date before it
 * takes the book's place. It goes when it is closed; one that a killed restore left behind goes
 * when the next begins.
 */
public final class RestoringPlace implements AutoCloseable {

  /** Where the book of an installation stands. */
  public static final String BOOK = "public";

  private static final String BESIDE = "barreltally_restoring";

  /** Keeps two restores from one database; any fixed number does. */
  private static final long RESTORE_LOCK = 4_881_907_316_254L;

  private static final String LOCK_PATIENCE = "SET LOCAL lock_timeout = '30s'";

  private final OwnedDatabase database;
  private final Connection connection;
  private final Migrations migrations;
  private Map<String, Long> blank = Map.of();

  private RestoringPlace(OwnedDatabase database, Connection connection) {
    this.database = database;
    this.connection = connection;
    this.migrations = new Migrations(database, BESIDE);
  }

  /**
   * Begins a restore on a connection of the owner.
   *
   * @throws InstallationInUse if another restore is under way, or the application runs
   */
  public static RestoringPlace beside(OwnedDatabase database, Connection connection)
      throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet lock =
            statement.executeQuery("SELECT pg_try_advisory_lock(" + RESTORE_LOCK + ")")) {
      lock.next();
      if (!lock.getBoolean(1)) {
        throw new InstallationInUse("Another restore");
      }
    }
    return new RestoringPlace(database, connection);
  }

  /** Checks that this tool can make the tables of a backup's version. */
  public void mustKnow(String version) {
    migrations.mustKnow(version);
  }

  /** Refuses an installation that runs, holds a book, or was made by a later version. */
  public void refuseUnlessEmpty() throws SQLException {
    EmptyInstallation installation = new EmptyInstallation(connection, BOOK);
    installation.mustBeLeftAlone(database.applicationRole());
    blank = blank();
    installation.mustHoldNoMoreThan(blank);
  }

  /** The rows of a new installation of the version that the tables have. */
  private Map<String, Long> blank() throws SQLException {
    Optional<String> version = Catalog.schemaVersion(connection, BOOK);
    if (version.isEmpty()) {
      return Map.of();
    }
    if (migrations.isLaterThanKnown(version.get())) {
      throw new InstallationTooNew(version.get());
    }
    makeAnew();
    migrations.to(version.get());
    return EmptyInstallation.counts(connection, BESIDE);
  }

  /** Makes the tables as the backup's version had them and fills them, wholly or not at all. */
  public void fill(BackupFile backup) throws SQLException, IOException {
    makeAnew();
    migrations.to(backup.manifest().schemaVersion());
    connection.setAutoCommit(false);
    try {
      new Loading(connection, BESIDE).load(backup);
      connection.commit();
    } finally {
      connection.rollback();
      connection.setAutoCommit(true);
    }
    SchemaObjects.run(connection, "ANALYZE");
  }

  /** Brings what was filled in up to this version. */
  public void bringUpToDate() {
    migrations.toNewest();
  }

  /** Lets names without a schema mean what stands here. */
  public void makeCurrent() throws SQLException {
    SchemaObjects.run(connection, "SET search_path = " + BESIDE);
  }

  /** Takes the place of the installation's tables, if they are still empty. */
  public void takeOver() throws SQLException {
    connection.setAutoCommit(false);
    try {
      SchemaObjects.run(connection, LOCK_PATIENCE);
      EmptyInstallation installation = new EmptyInstallation(connection, BOOK);
      installation.lock();
      installation.mustHoldNoMoreThan(blank);
      SchemaObjects.drop(connection, BOOK);
      SchemaObjects.move(connection, BESIDE, BOOK);
      connection.commit();
    } finally {
      connection.rollback();
      connection.setAutoCommit(true);
    }
  }

  private void makeAnew() throws SQLException {
    drop();
    SchemaObjects.run(connection, "CREATE SCHEMA " + BESIDE);
    // the application's role sees its tables here as it will see them in their place
    SchemaObjects.run(
        connection,
        "GRANT USAGE ON SCHEMA " + BESIDE + " TO " + BookTable.quoted(database.applicationRole()));
  }

  private void drop() throws SQLException {
    SchemaObjects.run(connection, "DROP SCHEMA IF EXISTS " + BESIDE + " CASCADE");
  }

  @Override
  public void close() throws SQLException {
    drop();
  }
}
