package org.barreltally.shops;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * A counted shelf and what is due for it.
 *
 * @param movement null where nothing was gone
 * @param lookAt what does not fit together, in words; empty where all does
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ShelfCount(
    UUID id,
    String shop,
    LocalDate on,
    UUID movement,
    Terms terms,
    List<Line> lines,
    Money due,
    List<String> lookAt) {

  public ShelfCount {
    lines = List.copyOf(lines);
    lookAt = List.copyOf(lookAt);
  }

  /** With what of its lines is to be looked at. */
  public static ShelfCount of(
      UUID id, String shop, LocalDate on, UUID movement, Terms terms, List<Line> lines, Money due) {
    List<String> lookAt =
        lines.stream().map(Line::toLookAt).filter(words -> !words.isEmpty()).toList();
    return new ShelfCount(id, shop, on, movement, terms, lines, due, lookAt);
  }

  /**
   * Jars of one lot and size, in pieces.
   *
   * @param missing below zero where more stood there than the book had
   * @param price of one jar on the day; null where nothing was gone
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Line(
      String container,
      String grade,
      String lot,
      long book,
      long counted,
      long sold,
      long broken,
      long missing,
      Money price,
      Money due) {

    String toLookAt() {
      return missing < 0
          ? "%d × %s of lot %s more than the book had. A delivery may be missing in the book, or a lot was misread."
              .formatted(-missing, container, lot)
          : "";
    }
  }
}
