package org.barreltally.keeping.internal;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
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

  private static final String SUFFIX = "_restoring";

  /** Keeps two restores from one book; any fixed number does. */
  private static final long RESTORE_LOCK = 4_881_907_316_254L;

  private static final String LOCK_PATIENCE = "SET LOCAL lock_timeout = '30s'";

  private final OwnedDatabase database;
  private final Connection connection;
  private final String book;
  private final String beside;
  private final Migrations migrations;
  private Map<String, Long> blank = Map.of();

  /** The version whose tables stand beside, with nothing in them but what migrations put there. */
  private String made = "";

  private RestoringPlace(OwnedDatabase database, Connection connection) {
    this.database = database;
    this.connection = connection;
    this.book = database.schema();
    this.beside = nameBeside(database);
    this.migrations = new Migrations(database, beside);
  }

  /**
   * Begins a restore on a connection of the owner.
   *
   * @throws InstallationInUse if another restore is under way, or the application runs
   */
  public static RestoringPlace beside(OwnedDatabase database, Connection connection)
      throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT pg_try_advisory_lock(hashtextextended(?, ?))")) {
      query.setString(1, nameBeside(database));
      query.setLong(2, RESTORE_LOCK);
      ResultSet lock = query.executeQuery();
      lock.next();
      if (!lock.getBoolean(1)) {
        throw new InstallationInUse("Another restore");
      }
    }
    return new RestoringPlace(database, connection);
  }

  private static String nameBeside(OwnedDatabase database) {
    return database.schema() + SUFFIX;
  }

  /** Checks that this tool can make the tables of a backup's version. */
  public void mustKnow(String version) {
    migrations.mustKnow(version);
  }

  /**
   * Refuses an installation that runs, holds a book, or was made by a later version. On one of
   * several that has no tables yet nothing runs, though the program may run for the others.
   */
  public void refuseUnlessEmpty() throws SQLException {
    EmptyInstallation installation = new EmptyInstallation(connection, book);
    if (!database.isOneOfSeveral() || Catalog.schemaVersion(connection, book).isPresent()) {
      installation.mustBeLeftAlone(database.loginRole());
    }
    blank = blank();
    installation.mustHoldNoMoreThan(blank);
  }

  /** The rows of a new installation of the version that the tables have. */
  private Map<String, Long> blank() throws SQLException {
    Optional<String> version = Catalog.schemaVersion(connection, book);
    if (version.isEmpty()) {
      return Map.of();
    }
    if (migrations.isLaterThanKnown(version.get())) {
      throw new InstallationTooNew(version.get());
    }
    make(version.get());
    return EmptyInstallation.counts(connection, beside);
  }

  /** Makes the tables as the backup's version had them and fills them, wholly or not at all. */
  public void fill(BackupFile backup) throws SQLException, IOException {
    make(backup.manifest().schemaVersion());
    made = "";
    connection.setAutoCommit(false);
    try {
      new Loading(connection, beside).load(backup);
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
    SchemaObjects.run(connection, "SET search_path = " + BookTable.quoted(beside));
  }

  /** Takes the place of the installation's tables, if they are still empty. */
  public void takeOver() throws SQLException {
    connection.setAutoCommit(false);
    try {
      SchemaObjects.run(connection, LOCK_PATIENCE);
      EmptyInstallation installation = new EmptyInstallation(connection, book);
      installation.lock();
      installation.mustHoldNoMoreThan(blank);
      SchemaObjects.drop(connection, book);
      SchemaObjects.move(connection, beside, book);
      connection.commit();
    } finally {
      connection.rollback();
      connection.setAutoCommit(true);
    }
  }

  private void make(String version) throws SQLException {
    if (made.equals(version)) {
      return;
    }
    drop();
    SchemaObjects.run(connection, "CREATE SCHEMA " + BookTable.quoted(beside));
    // the application's role sees its tables here as it will see them in their place
    SchemaObjects.run(
        connection,
        "GRANT USAGE ON SCHEMA "
            + BookTable.quoted(beside)
            + " TO "
            + BookTable.quoted(database.applicationRole()));
    migrations.to(version);
    made = version;
  }

  private void drop() throws SQLException {
    SchemaObjects.run(connection, "DROP SCHEMA IF EXISTS " + BookTable.quoted(beside) + " CASCADE");
  }

  @Override
  public void close() throws SQLException {
    drop();
  }
}
