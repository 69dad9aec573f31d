package org.barreltally.shows;

import java.time.Instant;
import java.util.Locale;
import java.util.UUID;

/**
 * Something to be done after a show.
 *
 * @param container null where it is not about jars of one container and lot
 * @param count jars it is about; null where that is not known
 * @param doneAt null until it is done
 */
public record ToDo(
    UUID id,
    Kind kind,
    String container,
    String lot,
    Long count,
    String reason,
    Instant since,
    Instant doneAt) {

  /** What is to be done. */
  public enum Kind {
    /** Jars came home with wet or loose labels. */
    WET_LABELS,
    /** A packed show was called off: look at the labels before the jars go back on the shelf. */
    CHECK_LABELS;

    /** {@code wet-labels, check-labels}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The kind with that code; the database keeps no other. */
    public static Kind of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
  }
}
