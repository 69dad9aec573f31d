package org.barreltally.measure;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the tables of {@code db/reference}: CSV with a header row, comments after {@code #}. */
public final class ReferenceTable {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setTrim(true)
          .get();

  private ReferenceTable() {}

  /** The rows of a table by its file name; a missing or unreadable table is a defect. */
  public static List<CSVRecord> rows(String file) {
    String path = "db/reference/" + file;
    try (InputStream in = ReferenceTable.class.getClassLoader().getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("missing on the classpath: " + path);
      }
      try (CSVParser parser =
          CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
        return parser.getRecords();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + path, e);
    }
  }

  /** A cell as a number, 0 when it is empty. */
  public static double number(CSVRecord row, String column) {
    String cell = row.get(column);
    return cell.isEmpty() ? 0 : Double.parseDouble(cell);
  }
}
