package org.barreltally.start;

/**
 * The start must end here for a reason the person can mend. The message is one plain sentence (or
 * two) for the terminal: what was found and what to do. It never holds a password.
 */
public final class CannotStart extends RuntimeException {

  /** A reason seen by the program's own checks. */
  public CannotStart(String sentence) {
    super(sentence);
  }

  /** A reason that the system gave; the cause is kept for debugging and is not printed. */
  public CannotStart(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
