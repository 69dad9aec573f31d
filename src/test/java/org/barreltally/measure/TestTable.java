package org.barreltally.measure;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Published figures to check against, from {@code src/test/resources/reference}. */
final class TestTable {
  private TestTable() {}

  static List<CSVRecord> rows(String file) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (InputStream in = TestTable.class.getResourceAsStream("/reference/" + file);
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static double celsius(CSVRecord row, String column) {
    return Quantity.of(row.get(column), Unit.DEGF).doubleIn(Unit.DEGC);
  }
}
