package org.barreltally.errands;

import java.time.Instant;
import java.util.Locale;
import java.util.UUID;

/**
 * Work that somebody asked for.
 *
 * @param steps how many there are; null while nobody knows
 * @param fileName of the paper that can be fetched; null if there is none
 * @param leadsTo the page where the result stands; null if there is none
 * @param problem why it was refused; null if it was not
 */
public record Errand(
    UUID id,
    String kind,
    UUID askedBy,
    Instant askedAt,
    State state,
    int stepsDone,
    Integer steps,
    Instant endedAt,
    String fileName,
    String leadsTo,
    Why problem) {

  /** How far it is. */
  public enum State {
    WAITING,
    AT_WORK,
    DONE,
    REFUSED,
    /** The program stopped in the middle; nothing of it is half in the book. */
    BROKEN_OFF;

    /** {@code waiting, at-work, done, refused, broken-off}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static State of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
  }

  /** Whether waiting for it still makes sense. */
  public boolean isOpen() {
    return state == State.WAITING || state == State.AT_WORK;
  }
}
