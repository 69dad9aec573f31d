package org.barreltally.containers;

import java.math.BigDecimal;
import java.util.Locale;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/**
 * A size that syrup is packed in.
 *
 * @param netContents nominal contents at 68 °F (20 °C), as the owner said it
 * @param brimful what it takes to the brim; null where nobody said
 * @param emptyWeight of the container with its cap; null where nobody said
 */
public record Container(
    String code,
    String name,
    Quantity netContents,
    Quantity brimful,
    Quantity emptyWeight,
    Material material) {

  /** What a container is made of. */
  public enum Material {
    GLASS,
    PLASTIC,
    TIN,
    OTHER;

    /** {@code glass, plastic, tin, other}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The material with this code, which the database guarantees to exist. */
    public static Material of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT));
    }
  }

  /** Processing Grade goes only into containers of at least this (USDA AMS grade standards). */
  public static final Quantity LEAST_FOR_PROCESSING = Quantity.of(5, Unit.GAL);

  /** Nominal contents in millilitres at 20 °C. */
  public double netML() {
    return netContents.doubleIn(Unit.ML);
  }

  /** Whether it is large enough for Processing Grade. */
  public boolean takesProcessingGrade() {
    BigDecimal least = LEAST_FOR_PROCESSING.in(Unit.ML);
    return netContents.in(Unit.ML).compareTo(least) >= 0;
  }
}
