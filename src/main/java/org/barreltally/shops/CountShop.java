package org.barreltally.shops;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.stock.JarLine;

/**
 * A shop's shelf was counted, all of it.
 *
 * @param on null for today
 * @param by who counted; may be null; kept where it can be removed
 */
public record CountShop(
    LocalDate on,
    @Size(max = 80, message = "Give a name of at most 80 characters.") String by,
    @NotEmpty(message = "Give a line for every lot and size on the shelf.")
        @Size(max = JarLine.LINES_MAX, message = "Give at most 500 lines.")
        List<@Valid @NotNull(message = "Give container, lot and count.") Line> lines) {

  private static final String PIECES = "Give a whole number of jars from 0 to 1,000,000.";

  /**
   * Jars of one lot and size.
   *
   * @param lot null to count the size without its lots: the oldest are taken to have gone first
   * @param count that stand there, in pieces
   * @param sold as the shop's own records say; null to take all that is gone, and not broken, as
   *     sold
   * @param broken shown or told; null for none
   */
  public record Line(
      @NotBlank(message = "Name the size.") String container,
      String lot,
      @NotNull(message = PIECES)
          @Min(value = 0, message = PIECES)
          @Max(value = JarLine.COUNT_MAX, message = PIECES)
          Long count,
      @Min(value = 0, message = PIECES) @Max(value = JarLine.COUNT_MAX, message = PIECES) Long sold,
      @Min(value = 0, message = PIECES) @Max(value = JarLine.COUNT_MAX, message = PIECES)
          Long broken) {}
}
