package org.barreltally.documents.internal;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.PriceSheetText;
import org.barreltally.documents.TextDoesNotFit;

/** Sets the sections of a price list one below the other, column after column, page after page. */
final class SheetFlow {

  /** A block where it stands. */
  record Placed(int page, double x, double top, SheetBlock block) {}

  private static final double DETAIL = 0.72;
  private static final double LEAST_DETAIL = 10.5;
  private static final double HEADING = 1.12;
  private static final double LEAST = 7;
  private static final double UNBOUNDED = 1e6;
  private static final double GAP = 10;

  private final Faces faces;
  private final SheetColumns columns;
  private final double type;
  private final List<Placed> placed = new ArrayList<>();
  private int page;
  private int column;
  private double y;
  private boolean rowAlone;

  private SheetFlow(Faces faces, SheetColumns columns, double type) {
    this.faces = faces;
    this.columns = columns;
    this.type = type;
    this.y = columns.top(0);
  }

  /**
   * @param type size of the rows, points
   * @throws TextDoesNotFit if a word is wider than a column
   */
  static SheetFlow of(PriceSheetText text, Faces faces, SheetColumns columns, double type) {
    SheetFlow flow = new SheetFlow(faces, columns, type);
    text.sections().forEach(flow::section);
    return flow;
  }

  int pages() {
    return page + 1;
  }

  double type() {
    return type;
  }

  /** Whether the last row of a section stands alone in a column, cut off from the others. */
  boolean hasRowAlone() {
    return rowAlone;
  }

  SheetColumns columns() {
    return columns;
  }

  List<Placed> placed() {
    return placed;
  }

  private void section(PriceSheetText.Section section) {
    SheetBlock heading = heading(section.heading());
    for (int i = 0; i < section.rows().size(); i++) {
      SheetBlock row = row(section.rows().get(i));
      if (i == 0) {
        double before = atTop() ? 0 : SheetBlock.BEFORE * type;
        if (!fits(before + heading.height() + row.height())) {
          turn();
          before = 0;
        }
        y -= before;
        place(heading);
      } else if (!fits(row.height())) {
        turn();
        place(heading(section.heading() + " (continued)"));
        rowAlone |= i == section.rows().size() - 1;
      }
      place(row);
    }
  }

  private boolean atTop() {
    return y == columns.top(page);
  }

  private boolean fits(double height) {
    return atTop() || y - height >= columns.bottom();
  }

  private void turn() {
    column++;
    if (column == columns.number()) {
      column = 0;
      page++;
    }
    y = columns.top(page);
  }

  private void place(SheetBlock block) {
    placed.add(new Placed(page, columns.x(column), y, block));
    y -= block.height();
  }

  private SheetBlock heading(String words) {
    return new SheetBlock.Heading(set("lines", words, true, HEADING * type, columns.width()));
  }

  private SheetBlock row(PriceSheetText.Row row) {
    double price = faces.bold().width(row.price()) * type;
    double room = columns.width() - price - GAP;
    List<TextBlock.Line> name = set("lines", row.name(), false, type, room);
    double small = Math.max(DETAIL * type, LEAST_DETAIL);
    String words = columns.number() == 1 ? row.detail() : row.shortDetail();
    List<TextBlock.Line> detail = set("lines", words, false, small, columns.width());
    double used = width(name.get(name.size() - 1)) + GAP + width(detail.get(0));
    boolean beside = detail.size() == 1 && used <= room;
    return new SheetBlock.Row(name, detail, beside, row.price());
  }

  private double width(TextBlock.Line line) {
    return faces.of(line.bold()).width(line.text()) * line.size();
  }

  private List<TextBlock.Line> set(
      String field, String text, boolean bold, double size, double width) {
    faces.of(bold).require(Faces.tidy(text), field);
    return new TextBlock(faces, width, UNBOUNDED)
        .fit(List.of(new Wording(field, text, bold, size, size, Math.min(size, LEAST))));
  }
}
