package org.barreltally.stock.internal;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import org.barreltally.stock.BrokenCsv;

/** Reads the text of an opening stock file: RFC 4180, UTF-8, a header row first. */
public final class OpeningFile {

  /** The most rows of one file. */
  public static final int ROWS_MAX = 5000;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final CSVFormat FORM =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
          .setAllowMissingColumnNames(false)
          .get();

  private OpeningFile() {}

  /**
   * The rows of the file.
   *
   * @throws BrokenCsv if it is no such file, has other columns, no rows or too many
   */
  public static List<Cells> read(byte[] bytes) {
    String text = text(bytes);
    try (CSVParser parser = FORM.parse(new StringReader(text))) {
      checkHeader(parser.getHeaderNames());
      List<Cells> rows = new ArrayList<>();
      for (CSVRecord row : parser) {
        if (rows.size() == ROWS_MAX) {
          throw new BrokenCsv("There are more than 5,000 rows. Send the rest as another file.");
        }
        rows.add(new Cells(parser.getCurrentLineNumber(), row));
      }
      if (rows.isEmpty()) {
        throw new BrokenCsv("There are no rows under the header. Give a row for each barrel.");
      }
      return rows;
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      throw new BrokenCsv(
          "A quotation mark is out of place. Put fields with commas in quotes and double the quotes"
              + " inside them (RFC 4180).");
    } catch (IllegalArgumentException e) {
      throw new BrokenCsv("A column of the header has no name, or two have the same name.");
    }
  }

  private static String text(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      if (text.indexOf('\0') >= 0) {
        throw new BrokenCsv("The file has a NUL character. Save it as plain text, in UTF-8.");
      }
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new BrokenCsv("The file is not in UTF-8. Save it again with that encoding.");
    }
  }

  private static void checkHeader(List<String> names) {
    Set<String> unknown = new TreeSet<>(names);
    Column.names().forEach(unknown::remove);
    if (!unknown.isEmpty()) {
      throw new BrokenCsv(
          "These columns are not known: %s. Known are: %s."
              .formatted(String.join(", ", unknown), String.join(", ", Column.names())));
    }
    if (!names.contains(Column.KIND.label())) {
      throw new BrokenCsv(
          "The column kind is missing: it says of each row whether it is a barrel or jars.");
    }
  }
}
