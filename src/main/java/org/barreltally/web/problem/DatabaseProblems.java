package org.barreltally.web.problem;

import java.sql.SQLException;
import java.util.Optional;
import org.jboss.logging.Logger;

/**
 * What PostgreSQL refuses although no rule before it did, by SQLState (PostgreSQL documentation,
 * appendix A). Rules should speak first, so each of these is logged.
 */
final class DatabaseProblems {

  private static final Logger LOG = Logger.getLogger(DatabaseProblems.class);
  private static final long TRY_AGAIN_SECONDS = 2;

  private DatabaseProblems() {}

  /** The problem, or nothing when it is a defect of ours. */
  static Optional<Problem> of(SQLException thrown) {
    String state = thrown.getSQLState();
    if (state == null || isPassing(state)) {
      LOG.warnf(thrown, "The database is busy (%s)", state);
      return Optional.of(tryAgain());
    }
    if (state.startsWith("23")) {
      LOG.warnf(thrown, "A constraint refused what no rule did (%s)", state);
      return Optional.of(
          new Problem(
              409,
              "clash",
              "This clashes with what stands in the book",
              "Something else is recorded already that this does not fit with. Read the record"
                  + " again and compare; nothing of this request was stored."));
    }
    if (state.equals("22021") || state.equals("22P05")) {
      LOG.debug("text that cannot be stored", thrown);
      return Optional.of(badCharacter());
    }
    if (state.equals("25006")) {
      LOG.warnf(thrown, "Somebody who read would have written on a standby");
      return Optional.of(ReadingCopy.problem());
    }
    return Optional.empty();
  }

  static Problem badCharacter() {
    return new Problem(
        400,
        "bad-character",
        "A character cannot be stored",
        "The request contains a NUL character, which no text here may hold. Remove it.");
  }

  /** Without state: no connection was free. 08, 53, 57P: away or overloaded. 40, 55P03: a race. */
  private static boolean isPassing(String state) {
    return state.startsWith("08")
        || state.startsWith("53")
        || state.startsWith("57P")
        || state.equals("40001")
        || state.equals("40P01")
        || state.equals("55P03");
  }

  private static Problem tryAgain() {
    return new Problem(
            503,
            "try-again",
            "Busy just now",
            "Others are writing in the same place, or the database is away. Send the same request"
                + " with the same id again in a moment; it is done once.")
        .retryAfter(TRY_AGAIN_SECONDS);
  }
}
