package org.barreltally.netcontents;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Printed tables to check against, from {@code src/test/resources/reference}. */
final class Printed {

  private Printed() {}

  static List<CSVRecord> rows(String file) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (InputStream in = Printed.class.getResourceAsStream("/reference/" + file);
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
