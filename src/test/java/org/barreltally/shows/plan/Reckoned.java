package org.barreltally.shows.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Figures of a general statistics library, made by {@code reference/negative_binomial.py}. */
final class Reckoned {

  private Reckoned() {}

  static List<CSVRecord> rows(String file) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (InputStream in = Reckoned.class.getResourceAsStream("/reference/" + file);
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** A sample of shows, some sold out. */
  static List<CensoredCount> sample(String name) {
    return rows("sold_out_shows.csv").stream()
        .filter(row -> row.get("sample").equals(name))
        .map(
            row ->
                new CensoredCount(
                    Long.parseLong(row.get("pieces")),
                    row.get("sold_out").equals("True"),
                    number(row, "exposure"),
                    number(row, "weight")))
        .toList();
  }
}
