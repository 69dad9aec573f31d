package org.barreltally.shows;

import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;

/**
 * Something that is due for a show.
 *
 * @param days until it is due; below zero where it is overdue
 * @param words what to do
 */
public record Due(
    LocalDate on, long days, boolean overdue, What what, UUID show, String name, String words) {

  /** What is due. */
  public enum What {
    APPLY,
    ANSWER,
    PAY,
    PACK,
    SET_UP,
    RUN,
    COUNT_BACK,
    SETTLE,
    TO_DO;

    /** {@code apply, answer, pay, pack, set-up, run, count-back, settle, to-do}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
