package org.barreltally.lots.rest;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.lots.Lot;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;

/**
 * A lot as the interface shows it.
 *
 * @param kind bulk or packed
 * @param brix true, at 20 °C
 */
public record LotView(
    String lot,
    String kind,
    LocalDate madeOn,
    List<Integer> seasons,
    BigDecimal brix,
    ColorClass grade,
    Double transmittance,
    Taste taste,
    boolean held) {

  static LotView of(Lot lot) {
    return new LotView(
        lot.code(),
        lot.kind().code(),
        lot.madeOn(),
        lot.seasons(),
        BigDecimal.valueOf(lot.brix().value()).setScale(3, RoundingMode.HALF_UP),
        lot.grade(),
        lot.transmittance(),
        lot.taste(),
        lot.held());
  }
}
