package org.barreltally.people.internal;

import java.time.Clock;
import javax.sql.DataSource;

/** The rows of people on a database and a clock of the test's choice. */
public final class RowsFixture {

  private RowsFixture() {}

  public static Users users(DataSource database) {
    return new Users(database);
  }

  public static Sessions sessions(DataSource database, Clock clock) {
    return new Sessions(database, clock);
  }
}
