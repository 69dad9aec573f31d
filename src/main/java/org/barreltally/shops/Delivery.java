package org.barreltally.shops;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

/** Jars that were brought to a shop, or fetched home from it. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Delivery(
    UUID id,
    String shop,
    Direction direction,
    LocalDate on,
    UUID movement,
    List<Line> lines,
    String note) {

  public Delivery {
    lines = List.copyOf(lines);
  }

  /** Which way they went. */
  public enum Direction {
    DELIVERED,
    FETCHED;

    /** {@code delivered, fetched}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Jars of one lot and size, in pieces. */
  public record Line(String container, String grade, String lot, long count) {}
}
