package org.barreltally.start;

import java.sql.SQLException;

/** Puts what a database server answered into one sentence. Codes are PostgreSQL's SQLSTATEs. */
final class DatabaseFault {

  static final String WRONG_PASSWORD = "28P01";
  static final String LOGIN_REFUSED = "28000";
  static final String NO_SUCH_DATABASE = "3D000";
  static final String NOT_ALLOWED = "42501";
  private static final String CONNECTION_CLASS = "08";

  private DatabaseFault() {}

  /** Whether the server answered, but does not let this role in with this password. */
  static boolean isLoginRefused(SQLException fault) {
    return WRONG_PASSWORD.equals(fault.getSQLState()) || LOGIN_REFUSED.equals(fault.getSQLState());
  }

  /** What to say when a login could not be used. */
  static CannotStart sentence(DatabaseLogin login, SQLException fault) {
    String state = fault.getSQLState() == null ? "" : fault.getSQLState();
    if (isLoginRefused(fault)) {
      return new CannotStart(
          "The database at %s does not let the role %s in; check BARRELTALLY_DB_USER and BARRELTALLY_DB_PASSWORD."
              .formatted(login.address(), login.user()),
          fault);
    }
    if (NO_SUCH_DATABASE.equals(state)) {
      return new CannotStart(
          "The server answers, but there is no database %s; create it or mend BARRELTALLY_DB_URL (%s)."
              .formatted(login.database(), login.address()),
          fault);
    }
    if (state.startsWith(CONNECTION_CLASS)) {
      return new CannotStart(
          "The database at %s cannot be reached; check that it runs and that BARRELTALLY_DB_URL is right."
              .formatted(login.address()),
          fault);
    }
    return new CannotStart(
        "The database at %s refused: %s".formatted(login.address(), oneLine(fault)), fault);
  }

  /** A message without line breaks, for the terminal. */
  static String oneLine(Throwable fault) {
    String message = fault.getMessage();
    return message == null
        ? fault.getClass().getSimpleName()
        : message.strip().replaceAll("\\s*\\R\\s*", " ");
  }
}
