package org.barreltally.stock;

/** How a malformed field about jars is mended, and its bounds. */
final class JarWords {

  static final String PLACE = "Give the code of a place, for example cool-room.";
  static final String CONTAINER = "Give the code of a container, for example PT.";
  static final String LOT = "Give the code of the lot on the label, for example P260620-1.";
  static final String COUNT = "Give a whole number of jars from 1 to 1,000,000.";
  static final String COUNTED = "Give a whole number of jars from 0 to 1,000,000.";
  static final String REASON = "Say it in at most 500 characters.";

  /** The most jars in one line; more is a slip of the pen. */
  static final long COUNT_MAX = 1_000_000;

  /** Longest reason, in characters. */
  static final int REASON_MAX = 500;

  private JarWords() {}
}
