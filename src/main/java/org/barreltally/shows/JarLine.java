package org.barreltally.shows;

/**
 * Jars of one container and lot.
 *
 * @param lot null where nobody knows it
 * @param count pieces, 1 to 1,000,000
 */
public record JarLine(String container, String lot, Long count) {

  /** The most jars in one line; more is a slip of the pen. */
  static final long COUNT_MAX = 1_000_000;

  /** The most lines in one request. */
  static final int LINES_MAX = 500;
}
