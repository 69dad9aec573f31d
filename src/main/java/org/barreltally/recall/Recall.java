package org.barreltally.recall;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A recall as it was kept. It knows no names.
 *
 * @param barrel the tag it was named by; null if the lot was named
 * @param rehearsal whether nothing was held
 * @param touched the recalled lot first, then everything made of it when the recall began
 * @param end null while it is open
 */
public record Recall(
    UUID id,
    String lot,
    String barrel,
    String reason,
    boolean rehearsal,
    Instant startedAt,
    List<Touched> touched,
    End end) {

  public Recall {
    touched = List.copyOf(touched);
  }

  /**
   * A lot with syrup of the recalled one.
   *
   * @param share fraction (0 to 1) of its syrup that came from the recalled lot
   */
  public record Touched(String lot, double share) {}

  /** How it ended. */
  public record End(String reason, Instant at) {}

  /** {@code rehearsal, open, ended}. */
  public String state() {
    if (end != null) {
      return "ended";
    }
    return rehearsal ? "rehearsal" : "open";
  }

  public List<String> lots() {
    return touched.stream().map(Touched::lot).toList();
  }
}
