package org.barreltally.netcontents;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.measure.Unit;

/**
 * The tolerable deficiency T of one prepackage in the European manner, {@code
 * db/reference/prepackage_tolerances.csv} (OIML R 87): by nominal contents in mL, a percentage
 * rounded up to a tenth of a mL, or a fixed volume.
 */
final class TolerableDeficiency {

  private static final List<CSVRecord> ROWS = ReferenceTable.rows("prepackage_tolerances.csv");
  private static final int PERCENT = 2;

  private TolerableDeficiency() {}

  /** T in mL; empty beyond 50 L, where the table ends. */
  static Optional<Quantity> of(Quantity nominal) {
    BigDecimal mL = nominal.in(Unit.ML);
    return ROWS.stream()
        .filter(
            row ->
                mL.compareTo(Tables.decimal(row, "over")) > 0
                    && mL.compareTo(Tables.decimal(row, "up_to")) <= 0)
        .findFirst()
        .map(row -> Quantity.of(deficiency(row, mL), Unit.ML));
  }

  private static BigDecimal deficiency(CSVRecord row, BigDecimal mL) {
    BigDecimal percent = Tables.decimal(row, "percent");
    return percent == null
        ? Tables.decimal(row, "absolute")
        : mL.multiply(percent).movePointLeft(PERCENT).setScale(1, RoundingMode.CEILING);
  }
}
