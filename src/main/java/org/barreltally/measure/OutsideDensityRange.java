package org.barreltally.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import org.barreltally.refusal.Refusal;

/** A strength, temperature or density beyond what the density of sucrose solutions is known for. */
public final class OutsideDensityRange extends Refusal {
  private final double value;
  private final double least;
  private final double most;

  /**
   * @param field what was out of range: {@code brix}, {@code temperature} or {@code density}
   * @param unit its unit, for people
   */
  public OutsideDensityRange(String field, double value, double least, double most, String unit) {
    super(
        Kind.RULE,
        "outside-density-range",
        "Beyond the density table",
        "A %s of %s %s is outside %s to %s %s, where the density of syrup is known. Check it."
            .formatted(field, plain(value), unit, plain(least), plain(most), unit),
        field);
    this.value = value;
    this.least = least;
    this.most = most;
  }

  public double value() {
    return value;
  }

  public double least() {
    return least;
  }

  public double most() {
    return most;
  }

  private static String plain(double number) {
    return Double.isFinite(number)
        ? new BigDecimal(number, new MathContext(6)).stripTrailingZeros().toPlainString()
        : Double.toString(number);
  }
}
