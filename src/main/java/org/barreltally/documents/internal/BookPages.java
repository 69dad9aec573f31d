package org.barreltally.documents.internal;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.barreltally.documents.FormText;
import org.barreltally.documents.FormText.Type;
import org.barreltally.documents.Paper;

/**
 * The pages of a book as its chapters write them, from top to bottom. A page is drawn as soon as it
 * is full, so that a book of any length needs the memory of a page beside the finished ones. A
 * table begins with its head and a row at least, and its head stands again where it goes on.
 */
public final class BookPages {

  static final double MARGIN = 45;
  private static final double TOP = 58;
  private static final double BOTTOM = 52;
  private static final double TABLE_SCALE = 0.8;
  private static final double WORDS_SCALE = 0.9;
  private static final double BETWEEN = 10;
  private static final double CHAPTER_ROOM = 150;
  private static final double COLUMN_GAP = 12;
  private static final double TYPE = 10.5;
  private static final double LARGE_TYPE = 20;

  /**
   * A column of a table.
   *
   * @param share of the line, 0 to 1
   * @param right whether its texts end at its right edge, as numbers do
   */
  public record Heading(String words, double share, boolean right) {

    public static Heading of(String words, double share) {
      return new Heading(words, share, false);
    }

    public static Heading number(String words, double share) {
      return new Heading(words, share, true);
    }
  }

  private final Document document;
  private final Faces faces;
  private final Pen pen;
  private final BookFrame frame;
  private final double width;
  private final double first;
  private double top;
  private List<Heading> table = List.of();
  private boolean rows;

  BookPages(Document document, PdfWriter writer, Paper paper, Faces faces, BookFrame frame) {
    this.document = document;
    this.faces = faces;
    this.pen = new Pen(writer.getDirectContent(), faces);
    this.frame = frame;
    this.width = paper.width() - 2 * MARGIN;
    this.first = paper.height() - TOP;
    this.top = first;
  }

  /** Begins a chapter: on this page if there is room for something of it, else on the next. */
  void chapter(String title) {
    finish();
    if (top < first && top - BOTTOM < CHAPTER_ROOM) {
      turn();
    }
    top -= top < first ? 2 * BETWEEN : 0;
    frame.began(title, top);
    place(words(Type.LARGE, title, WORDS_SCALE), true);
    top -= BETWEEN / 2;
  }

  /** A paragraph over the whole line. */
  public void say(String text) {
    finish();
    place(words(Type.PLAIN, text, WORDS_SCALE), true);
    top -= BETWEEN / 2;
  }

  /** What is told in small type: where figures come from, and what to beware of. */
  public void note(String text) {
    finish();
    place(words(Type.SMALL, text, 1), true);
    top -= BETWEEN / 2;
  }

  /** Begins a table. Its head is drawn with its first row; without any, "None" stands instead. */
  public void table(Heading... headings) {
    finish();
    table = List.of(headings);
    rows = false;
  }

  /**
   * A row of the table that was begun.
   *
   * @param cells one for each column; null for an empty one
   */
  public void row(String... cells) {
    row(Type.PLAIN, false, cells);
  }

  /** A row that sums up, set apart by a line. */
  public void sum(String... cells) {
    row(Type.STRONG, true, cells);
  }

  private void row(Type type, boolean ruled, String... cells) {
    FormRow row = set(type, ruled, Stream.of(cells).map(c -> c == null ? "" : c).toList());
    if (!rows) {
      FormRow head = head();
      if (top - head.height() - row.height() < BOTTOM && top < first) {
        turn();
      }
      place(head, false);
      rows = true;
    } else if (top - row.height() < BOTTOM && top < first) {
      turn();
      place(head(), false);
    }
    place(row, false);
  }

  private FormRow head() {
    return set(Type.STRONG, true, table.stream().map(Heading::words).toList());
  }

  /** Ends the table that was begun. */
  void finish() {
    if (!table.isEmpty()) {
      if (!rows) {
        place(words(Type.PLAIN, "None in this year.", WORDS_SCALE), true);
      }
      top -= BETWEEN;
    }
    table = List.of();
  }

  private FormRow set(Type type, boolean ruled, List<String> texts) {
    List<FormText.Column> columns = new ArrayList<>();
    List<FormText.Cell> cells = new ArrayList<>();
    for (int i = 0; i < table.size(); i++) {
      Heading heading = table.get(i);
      columns.add(new FormText.Column(heading.share(), heading.right()));
      double gap = i < table.size() - 1 ? COLUMN_GAP : 0;
      cells.add(
          new FormText.Cell(
              heading.words(),
              Plainly.of(
                  texts.get(i),
                  faces.of(type == Type.STRONG),
                  heading.share() * width - gap,
                  TYPE * TABLE_SCALE)));
    }
    return FormRow.set(
        new FormText.Row(type, ruled, cells), columns, false, faces, width, TABLE_SCALE);
  }

  private FormRow words(Type type, String text, double scale) {
    double size = (type == Type.LARGE ? LARGE_TYPE : TYPE) * scale;
    String said = Plainly.of(text, faces.of(type == Type.LARGE), width, size);
    return FormRow.set(
        FormText.Row.of(type, false, "text", said),
        List.of(new FormText.Column(1, false)),
        false,
        faces,
        width,
        scale);
  }

  private void place(FormRow row, boolean mayTurn) {
    if (mayTurn && top - row.height() < BOTTOM && top < first) {
      turn();
    }
    row.draw(pen, MARGIN, width, top);
    top -= row.height();
  }

  /** Goes on at the top of the next page. */
  void turn() {
    document.newPage();
    frame.page();
    top = first;
  }
}
