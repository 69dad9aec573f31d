package org.barreltally.stock;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.Instant;
import java.util.List;

/**
 * A shelf was counted. Only what is in the lines was counted; nothing is said of other lots.
 *
 * @param by who counted; kept where it can be removed
 */
public record CountShelf(
    @NotBlank(message = JarWords.PLACE) @Size(max = 40, message = JarWords.PLACE) String place,
    Instant countedAt,
    @NotBlank(message = "Say who counted.")
        @Size(max = 80, message = "Give a name of at most 80 characters.")
        String by,
    @NotEmpty(message = "Give at least one line: container, lot and count.")
        @Size(
            max = LINES_MAX,
            message = "Give at most 2,000 lines; send the rest as another count.")
        List<@Valid @NotNull(message = "Give container, lot and count.") Line> lines) {

  /** The most lines of one count. */
  public static final int LINES_MAX = 2000;

  /**
   * Jars of one lot and size on the shelf.
   *
   * @param count pieces; zero if there are none
   * @param cause what became of jars that are short; null if nobody knows
   */
  public record Line(
      @NotBlank(message = JarWords.CONTAINER) @Size(max = 12, message = JarWords.CONTAINER)
          String container,
      @NotBlank(message = JarWords.LOT) @Size(max = 20, message = JarWords.LOT) String lot,
      @NotNull(message = JarWords.COUNTED)
          @Min(value = 0, message = JarWords.COUNTED)
          @Max(value = JarWords.COUNT_MAX, message = JarWords.COUNTED)
          Long count,
      Cause cause) {}
}
