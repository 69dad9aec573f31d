package org.barreltally.lots;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;
import org.barreltally.refusal.InvalidField;

/**
 * A lot as it stands.
 *
 * @param seasons every crop year whose syrup is in it, ascending
 * @param brix true Brix at 20 °C
 * @param grade null until its light transmittance was measured and it was tasted
 * @param transmittance %Tc at the newest grading; null until then
 * @param taste at the newest grading; null until then
 */
public record Lot(
    String code,
    Kind kind,
    LocalDate madeOn,
    List<Integer> seasons,
    Uncertain brix,
    ColorClass grade,
    Double transmittance,
    Taste taste,
    boolean held) {

  /** In what form the lot came to be. */
  public enum Kind {
    BULK,
    PACKED;

    /** {@code bulk, packed}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * @throws InvalidField when no kind has that code
     */
    public static Kind of(String code) {
      return Arrays.stream(values())
          .filter(kind -> kind.code().equals(code))
          .findFirst()
          .orElseThrow(() -> new InvalidField("kind", "Give one of bulk, packed."));
    }
  }
}
