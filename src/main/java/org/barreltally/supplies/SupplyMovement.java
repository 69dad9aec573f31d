package org.barreltally.supplies;

import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;

/**
 * What happened to a supply. Never changed.
 *
 * @param seq its number within the supply, from 1
 * @param pieces received, used, given back or counted
 * @param change what it did to what is on hand; zero where a count of a later day had it in already
 * @param run the movement of the canning run that used it; null for receipts and counts
 */
public record SupplyMovement(
    UUID id,
    String supply,
    long seq,
    Kind kind,
    LocalDate on,
    long pieces,
    long change,
    long onHandAfter,
    UUID run,
    String note) {

  /** What happened. */
  public enum Kind {
    RECEIPT,
    COUNT,
    RUN,
    /** The run that used it was taken back. */
    TAKEN_BACK;

    /** {@code receipt, count, run, taken-back}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The kind with this code, which the database guarantees to exist. */
    public static Kind of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
  }
}
