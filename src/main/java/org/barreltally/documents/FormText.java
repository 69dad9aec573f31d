package org.barreltally.documents;

import java.util.List;
import java.util.stream.Stream;

/**
 * What stands on a form: one page of rows in columns, read from top to bottom.
 *
 * @param title of the document
 */
public record FormText(Paper paper, String title, List<Part> parts) {

  /** A cell of this text alone is a box to tick, larger than the type beside it. */
  public static final String TICK_BOX = "□";

  /** How a row is set. */
  public enum Type {
    LARGE,
    STRONG,
    PLAIN,
    SMALL
  }

  /**
   * Rows of the same columns, with some space above.
   *
   * @param columns the parts of the line they take, from the left
   */
  public record Part(List<Column> columns, List<Row> rows) {

    /** A part of one column over the whole line. */
    static Part of(Row... rows) {
      return new Part(List.of(new Column(1, false)), List.of(rows));
    }
  }

  /**
   * @param share of the line, 0 to 1
   * @param right whether its texts end at its right edge
   */
  public record Column(double share, boolean right) {}

  /**
   * @param ruled whether a line is drawn above it
   * @param cells one for each column
   */
  public record Row(Type type, boolean ruled, List<Cell> cells) {

    /** A row whose cells a refusal names alike. */
    public static Row of(Type type, boolean ruled, String field, String... texts) {
      return new Row(type, ruled, Stream.of(texts).map(text -> new Cell(field, text)).toList());
    }
  }

  /**
   * @param field under which a refusal names it
   */
  public record Cell(String field, String text) {}
}
