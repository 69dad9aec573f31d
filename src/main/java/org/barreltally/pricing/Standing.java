package org.barreltally.pricing;

import java.time.LocalDate;
import java.util.UUID;

/**
 * What became of a price list since it was entered.
 *
 * @param replacedBy its next version; null while it is the newest
 * @param replacedFrom the first day of that version; null while there is none
 * @param withdrawn null unless it was
 */
public record Standing(UUID replacedBy, LocalDate replacedFrom, Withdrawn withdrawn) {

  /**
   * @param from the first day on which it no longer holds
   */
  public record Withdrawn(LocalDate from, String reason) {}

  /** A word that changes whenever this does, for If-Match. */
  public String state() {
    return (replacedBy == null ? "newest" : "replaced") + (withdrawn == null ? "" : "-withdrawn");
  }
}
