package org.barreltally.faults;

import java.util.UUID;

/**
 * Something asked of the program, with its own id, and what was heard of it first.
 *
 * @param kind what the model counts it as
 * @param count jars; 1 for what is counted itself
 * @param about a tag, a lot, or the place of a table
 */
final class Wish {

  /** What the model counts. */
  enum Kind {
    FILL,
    CAN,
    CARRY,
    WRITE_OFF,
    /** Jars packed out to a show's table. */
    PACK,
    /** Jars sold there. */
    SELL,
    /** A gift order taken; counted as one. */
    ORDER,
    /** Jars brought to a shop. */
    BRING,
    /** A shop's shelf counted; always the same number. */
    COUNT,
    /** Dollars that a shop pays. */
    PAY
  }

  final UUID id = UUID.randomUUID();
  final Kind kind;
  final String path;
  final String json;
  final long count;
  final String about;
  volatile int status;
  volatile String answer;

  Wish(Kind kind, String path, String json, long count, String about) {
    this.kind = kind;
    this.path = path;
    this.json = json;
    this.count = count;
    this.about = about;
  }

  /** Whether the program said that it was done. */
  boolean isAcknowledged() {
    return status == 201;
  }

  /** Whether nobody knows what became of it: no answer, or one that asks to try again. */
  boolean isOpen() {
    return status == 0 || status >= 500;
  }
}
