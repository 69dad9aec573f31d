package org.barreltally.lots.rest;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotAward;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;

/**
 * A lot as the interface shows it.
 *
 * @param kind bulk or packed
 * @param brix true, at 20 °C
 * @param awards the newest first; only where one lot is read, and only if it has any
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
    boolean held,
    List<LotAward> awards) {

  static LotView of(Lot lot) {
    return of(lot, List.of());
  }

  static LotView of(Lot lot, List<LotAward> awards) {
    return new LotView(
        lot.code(),
        lot.kind().code(),
        lot.madeOn(),
        lot.seasons(),
        BigDecimal.valueOf(lot.brix().value()).setScale(3, RoundingMode.HALF_UP),
        lot.grade(),
        lot.transmittance(),
        lot.taste(),
        lot.held(),
        awards.isEmpty() ? null : awards);
  }
}
