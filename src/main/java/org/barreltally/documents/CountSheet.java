package org.barreltally.documents;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText.Cell;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;

/**
 * A blind count sheet: what may stand at a place, with room for what two people count; the one
 * folds the other's column away. No figure of the book is on it, because counts seen first are
 * counts copied.
 */
final class CountSheet {

  /** Lots that turn up and are not on the list. */
  private static final int EMPTY_LINES = 8;

  /** Room to write by hand below a line. */
  private static final Row SPACE =
      row(
          Type.SMALL,
          false,
          cell("count", " "),
          cell("count", ""),
          cell("count", ""),
          cell("count", ""),
          cell("count", ""));

  private final String place;
  private final Maker maker;
  private final LocalDate day;
  private final List<Line> lines;

  /**
   * @param grade in words; empty where it is not known
   */
  record Line(String container, String grade, String lot) {}

  CountSheet(String place, Maker maker, LocalDate day, List<Line> lines) {
    this.place = place;
    this.maker = maker;
    this.day = day;
    this.lines = List.copyOf(lines);
  }

  FormText on(Paper paper) {
    return new FormText(
        paper, "Count sheet · " + place, List.of(head(), table(), signatures(), cautions()));
  }

  private Part head() {
    return Part.of(
        row(Type.LARGE, false, cell("title", "Count sheet: " + place)),
        row(
            Type.PLAIN,
            false,
            cell("maker", maker.name() + ", printed " + DayWords.of(day, maker.habit()))),
        row(
            Type.SMALL,
            false,
            cell(
                "how",
                "Count what stands there, case by case, by the lot on the label. Write 0 where there is none."
                    + " Let the second count without seeing the first: fold that column away or take a"
                    + " second sheet.")));
  }

  private Part table() {
    List<Row> rows = new ArrayList<>();
    rows.add(line(Type.STRONG, "Size", "Grade", "Lot", "First counter", "Second counter"));
    for (Line each : lines) {
      rows.add(line(Type.PLAIN, each.container(), each.grade(), each.lot(), "", ""));
      rows.add(SPACE);
    }
    for (int n = 0; n < EMPTY_LINES; n++) {
      rows.add(line(Type.PLAIN, "other", "", "", "", ""));
      rows.add(SPACE);
    }
    return new Part(
        List.of(
            new Column(0.13, false),
            new Column(0.25, false),
            new Column(0.22, false),
            new Column(0.2, false),
            new Column(0.2, false)),
        rows);
  }

  private static Row line(
      Type type, String size, String grade, String lot, String first, String second) {
    return row(
        type,
        true,
        cell("container", size),
        cell("grade", grade),
        cell("lot", lot),
        cell("count", first),
        cell("count", second));
  }

  private Part signatures() {
    String line = "______________________________";
    return new Part(
        List.of(new Column(0.5, false), new Column(0.5, false)),
        List.of(
            row(
                Type.STRONG,
                true,
                cell("signature", "First counter"),
                cell("signature", "Second counter")),
            row(Type.PLAIN, false, cell("signature", "Name"), cell("signature", "Name")),
            row(Type.PLAIN, false, cell("signature", line), cell("signature", line)),
            row(
                Type.PLAIN,
                false,
                cell("signature", "Day, hour, signature"),
                cell("signature", "Day, hour, signature")),
            row(Type.PLAIN, false, cell("signature", line), cell("signature", line))));
  }

  private Part cautions() {
    return Part.of(
        row(
            Type.SMALL,
            false,
            cell(
                "caution",
                "Glass cuts and full cases are heavy: wear gloves and closed shoes, lift with a second pair of"
                    + " hands, and do not climb on shelves. Set a jar that bulges, leaks or is cracked aside"
                    + " unopened.")));
  }

  private static Row row(Type type, boolean ruled, Cell... cells) {
    return new Row(type, ruled, List.of(cells));
  }

  private static Cell cell(String field, String text) {
    return new Cell(field, text);
  }
}
