package org.barreltally.documents;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.barreltally.documents.FormText.Cell;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;

/** Short ways to say the rows of a paper. */
final class Sheet {

  /** In the type size; the narrowest column for names holds a little more in its least type. */
  private static final double WIDEST_WORD = 15.5;

  private Sheet() {}

  static Row large(String text) {
    return new Row(Type.LARGE, false, List.of(cell(text)));
  }

  static Row strong(String text) {
    return new Row(Type.STRONG, false, List.of(cell(text)));
  }

  static Row plain(String text) {
    return new Row(Type.PLAIN, false, List.of(cell(text)));
  }

  static Row small(String text) {
    return new Row(Type.SMALL, false, List.of(cell(text)));
  }

  /** The heads of a table's columns. */
  static Row heads(String... texts) {
    return row(Type.SMALL, false, texts);
  }

  /** A row of a table, ruled above. */
  static Row entry(String... texts) {
    return row(Type.PLAIN, true, texts);
  }

  /** A row that sums up. */
  static Row sum(String... texts) {
    return row(Type.STRONG, true, texts);
  }

  private static Row row(Type type, boolean ruled, String... texts) {
    return new Row(type, ruled, Arrays.stream(texts).map(Sheet::cell).toList());
  }

  /** Columns by their share in hundredths; one below zero is set to the right. */
  static List<Column> columns(int... hundredths) {
    List<Column> columns = new ArrayList<>();
    for (int share : hundredths) {
      columns.add(new Column(Math.abs(share) / 100.0, share < 0));
    }
    return columns;
  }

  static Part table(List<Column> columns, List<Row> rows) {
    return new Part(columns, rows);
  }

  /**
   * Facts are set apart by commas, so that they wrap in a narrow column; words wider than any
   * column are parted, so that no name keeps a list from being printed.
   */
  private static Cell cell(String text) {
    StringBuilder parted = new StringBuilder();
    double run = 0;
    for (char c : text.replace(" · ", ", ").toCharArray()) {
      run = Character.isWhitespace(c) ? 0 : run + width(c);
      if (run > WIDEST_WORD && !Character.isLowSurrogate(c)) {
        parted.append(' ');
        run = width(c);
      }
      parted.append(c);
    }
    return new Cell("text", parted.toString());
  }

  /** About how wide a letter is, in its type size. */
  private static double width(char c) {
    if ("WMwm@%".indexOf(c) >= 0) {
      return 0.95;
    }
    return Character.isUpperCase(c) ? 0.78 : 0.6;
  }
}
