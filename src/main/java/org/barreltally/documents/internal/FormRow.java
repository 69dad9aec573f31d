package org.barreltally.documents.internal;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText;
import org.barreltally.documents.FormText.Type;

/**
 * A row of a form with its texts wrapped, ready to be drawn. Lengths in points.
 *
 * @param above space before it
 */
record FormRow(double above, boolean ruled, List<SetCell> cells, double below) {

  private static final double BETWEEN_COLUMNS = 12;
  private static final double ABOVE_PART = 16;
  private static final double BELOW_ROW = 3;
  private static final double LEAST_OF_SIZE = 0.7;
  private static final double HAIRLINE = 0.6;
  private static final double BOX_LARGER = 1.6;

  /**
   * A text in its column.
   *
   * @param left edge of the column, from the margin
   * @param room its width
   */
  record SetCell(double left, double room, boolean right, List<TextBlock.Line> lines) {}

  /**
   * @param width of the whole line
   * @throws org.barreltally.documents.TextDoesNotFit naming a word wider than its column
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  static FormRow set(
      FormText.Row row,
      List<FormText.Column> columns,
      boolean beginsPart,
      Faces faces,
      double width,
      double scale) {
    List<SetCell> cells = new ArrayList<>();
    double left = 0;
    for (int i = 0; i < columns.size(); i++) {
      double share = columns.get(i).share() * width;
      double room = i < columns.size() - 1 ? share - BETWEEN_COLUMNS : share;
      FormText.Cell cell = row.cells().get(i);
      boolean bold = row.type() == Type.LARGE || row.type() == Type.STRONG;
      faces.of(bold).require(Faces.tidy(cell.text()), cell.field());
      boolean box = FormText.TICK_BOX.equals(cell.text());
      double size = size(row.type()) * (box ? BOX_LARGER : 1) * scale;
      Wording wording =
          new Wording(cell.field(), cell.text(), bold, size, size, LEAST_OF_SIZE * size);
      cells.add(
          new SetCell(
              left,
              room,
              columns.get(i).right(),
              new TextBlock(faces, room, Double.MAX_VALUE).fit(List.of(wording))));
      left += share;
    }
    return new FormRow(
        (beginsPart ? ABOVE_PART : 0) * scale, row.ruled(), cells, BELOW_ROW * scale);
  }

  private static double size(Type type) {
    return switch (type) {
      case LARGE -> 20;
      case STRONG -> 10.5;
      case PLAIN -> 10.5;
      case SMALL -> 8.5;
    };
  }

  double height() {
    double lines = 0;
    for (SetCell cell : cells) {
      lines = Math.max(lines, TextBlock.height(cell.lines()));
    }
    return above + (ruled ? below : 0) + lines + below;
  }

  /**
   * @param x of the left margin
   * @param top of the row, its space above included
   */
  void draw(Pen pen, double x, double width, double top) {
    double y = top - above;
    if (ruled) {
      for (SetCell cell : cells) {
        pen.rule(x + cell.left(), x + cell.left() + cell.room(), y, HAIRLINE);
      }
      y -= below;
    }
    for (SetCell cell : cells) {
      if (cell.right()) {
        pen.blockEnding(cell.lines(), x + cell.left() + cell.room(), y);
      } else {
        pen.block(cell.lines(), x + cell.left(), y);
      }
    }
  }
}
