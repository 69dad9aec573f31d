package org.barreltally.gifts;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The cells of a file of recipients: RFC 4180 with commas or semicolons, in UTF-8 or Windows-1252,
 * with a header row or without one.
 *
 * @param columns what stands in each column; null for one that is not known
 * @param rows without the header
 */
record RecipientText(List<RecipientColumn> columns, List<Line> rows) {

  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** A header is a row in which so many cells name columns. */
  private static final int HEADER_NAMES = 3;

  /**
   * One row.
   *
   * @param number of the line in the file on which it begins
   */
  record Line(long number, List<String> cells) {}

  /**
   * @throws BrokenRecipientFile if it is no such file, has no rows, or columns nobody knows
   */
  static RecipientText of(byte[] bytes) {
    String text = decoded(bytes);
    List<Line> lines = lines(text);
    if (lines.isEmpty()) {
      throw new BrokenRecipientFile("There are no recipients in the file. Give a line for each.");
    }
    List<String> first = lines.get(0).cells();
    long names = first.stream().filter(c -> RecipientColumn.headed(c).isPresent()).count();
    if (names < HEADER_NAMES) {
      return new RecipientText(List.of(RecipientColumn.values()), lines);
    }
    List<RecipientColumn> columns = new ArrayList<>();
    for (String cell : first) {
      RecipientColumn column =
          RecipientColumn.headed(cell)
              .orElseThrow(
                  () ->
                      new BrokenRecipientFile(
                          "Column “%s” is not known. Known are: %s."
                              .formatted(
                                  cell.substring(0, Math.min(cell.length(), 40)),
                                  String.join(", ", RecipientColumn.labels()))));
      if (columns.contains(column)) {
        throw new BrokenRecipientFile("The header names " + column.label() + " twice.");
      }
      columns.add(column);
    }
    return new RecipientText(columns, lines.subList(1, lines.size()));
  }

  private static String decoded(byte[] bytes) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException notUtf8) {
      try {
        text = WINDOWS.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      } catch (CharacterCodingException neither) {
        throw new BrokenRecipientFile(
            "The file is neither UTF-8 nor Windows-1252. Save it as text in UTF-8.");
      }
    }
    if (text.indexOf('\0') >= 0) {
      throw new BrokenRecipientFile("The file has NUL characters. Save it as text in UTF-8.");
    }
    return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
  }

  private static List<Line> lines(String text) {
    CSVFormat form =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(delimiter(text))
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();
    List<Line> lines = new ArrayList<>();
    try (CSVParser parser = form.parse(new StringReader(text))) {
      long begins = 1;
      for (CSVRecord row : parser) {
        if (row.stream().anyMatch(cell -> !cell.isEmpty())) {
          lines.add(new Line(begins, row.toList()));
        }
        begins = parser.getCurrentLineNumber() + 1;
        if (lines.size() > RecipientRules.RECIPIENTS_MAX + 1) {
          throw new BrokenRecipientFile(
              "There are more than "
                  + RecipientRules.RECIPIENTS_MAX
                  + " recipients. Make more than one order of them.");
        }
      }
      return lines;
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      throw new BrokenRecipientFile(
          "A quotation mark is out of place. Put fields with the separator in them in quotes and"
              + " double the quotes inside (RFC 4180).");
    }
  }

  /** The one of comma and semicolon that parts the first line more often, outside quotes. */
  private static char delimiter(String text) {
    int commas = 0;
    int semicolons = 0;
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r') && commas + semicolons > 0) {
        break;
      } else if (!quoted && c == ',') {
        commas++;
      } else if (!quoted && c == ';') {
        semicolons++;
      }
    }
    return semicolons > commas ? ';' : ',';
  }
}
