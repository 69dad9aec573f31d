package org.barreltally.netcontents;

import java.math.BigDecimal;
import org.apache.commons.csv.CSVRecord;

/** Cells of the reference tables. */
final class Tables {

  private Tables() {}

  static BigDecimal decimal(CSVRecord row, String column) {
    String cell = row.get(column);
    return cell.isEmpty() ? null : new BigDecimal(cell);
  }

  static int whole(CSVRecord row, String column) {
    return Integer.parseInt(row.get(column));
  }

  /** A whole number, or the greatest one where the row goes on for ever. */
  static int upTo(CSVRecord row, String column) {
    return row.get(column).isEmpty() ? Integer.MAX_VALUE : whole(row, column);
  }
}
