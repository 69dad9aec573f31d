package org.barreltally.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import org.barreltally.refusal.Refusal;

/**
 * Syrup is never 30 to 40 °Brix, but a syrup hydrometer carries °Baumé on the other side of its
 * stem and there good syrup reads 36. Such a reading is refused, with the conversion offered.
 */
public final class LooksLikeBaume extends Refusal {
  private static final BigDecimal LEAST = BigDecimal.valueOf(30);
  private static final BigDecimal MOST = BigDecimal.valueOf(40);

  private final Quantity reading;
  private final transient OptionalDouble brix;

  private LooksLikeBaume(Quantity reading, OptionalDouble brix, String field) {
    super(Kind.RULE, "looks-like-baume", "Looks like Baumé", sentence(reading, brix), field);
    this.reading = reading;
    this.brix = brix;
  }

  /**
   * Refuses a syrup reading of 30 to 40 °Brix, both included; lets everything else pass.
   *
   * @param field the path of the reading in the request
   */
  public static void check(Quantity reading, String field) {
    BigDecimal value = reading.value();
    if (reading.unit() == Unit.BRIX && value.compareTo(LEAST) >= 0 && value.compareTo(MOST) <= 0) {
      throw new LooksLikeBaume(reading, converted(value.doubleValue()), field);
    }
  }

  /** The reading as given, in °Brix. */
  public Quantity reading() {
    return reading;
  }

  /** The °Brix it would be if it was °Baumé; empty when that is beyond 70 °Bx. */
  public OptionalDouble brix() {
    return brix;
  }

  private static OptionalDouble converted(double baume) {
    return baume <= Baume.fromBrix(Sucrose.BRIX_MAX)
        ? OptionalDouble.of(Baume.toBrix(baume))
        : OptionalDouble.empty();
  }

  private static String sentence(Quantity reading, OptionalDouble brix) {
    String other =
        brix.isPresent()
            ? "≈ "
                + BigDecimal.valueOf(brix.getAsDouble()).setScale(1, RoundingMode.HALF_UP)
                + " °Bx. Convert?"
            : "is over 70 °Bx. Check the reading.";
    return "Looks like Baumé: %s °Bé %s If it was read in °Bé, give the unit as Baume."
        .formatted(reading.value().stripTrailingZeros().toPlainString(), other);
  }
}
