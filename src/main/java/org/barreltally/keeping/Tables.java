package org.barreltally.keeping;

import org.barreltally.keeping.internal.Migrations;

/**
 * The tables of one of several books, each of which is brought up to date before the program
 * answers.
 */
public final class Tables {

  private final Migrations migrations;

  /** Those of a book whose schema is there. */
  public Tables(OwnedDatabase database) {
    this.migrations = new Migrations(database, database.schema());
  }

  /** Makes them, or brings them and what is in them up to this version. */
  public void bringUpToDate() {
    migrations.toNewest();
  }

  /**
   * Asks whether they are those of this version, as where nothing may be written.
   *
   * @throws org.flywaydb.core.api.FlywayException if they are not
   */
  public void mustBeOfThisVersion() {
    migrations.mustBeNewest();
  }
}
