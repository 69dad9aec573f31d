package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfWriter;
import java.util.List;
import java.util.function.Consumer;
import org.barreltally.documents.Paper;

/**
 * A book: title page, contents with page numbers that can be followed, and its chapters, with head,
 * foot and bookmarks. Nothing in it is refused for its characters or its length, for what the book
 * tells cannot be mended.
 */
public final class BookPdf {

  static final double CONTENTS_TYPE = 11;
  private static final double CONTENTS_LINE = 20;
  private static final double TITLE_TYPE = 30;
  private static final double OVER_TYPE = 16;
  private static final double LINE_TYPE = 11;
  private static final double DECIDE_TYPE = 9.5;
  private static final double LEAST = 0.5;

  /**
   * @param title also in the contents; no two alike
   * @param text writes it
   */
  public record Chapter(String title, Consumer<BookPages> text) {}

  private BookPdf() {}

  /**
   * @param chapters so few that the contents fit on a page
   */
  public static byte[] render(BookCover cover, Paper paper, List<Chapter> chapters) {
    return Pdf.of(
        cover.title() + " " + cover.over(),
        paper.width(),
        paper.height(),
        (document, writer) -> {
          Faces faces = Faces.read();
          BookFrame frame = new BookFrame(writer, paper, faces, cover);
          Pen pen = new Pen(writer.getDirectContent(), faces);
          title(cover, paper, pen);
          frame.first();
          BookPages pages = new BookPages(document, writer, paper, faces, frame);
          pages.turn();
          contents(chapters, paper, pen, frame, writer);
          pages.turn();
          for (Chapter chapter : chapters) {
            pages.chapter(chapter.title());
            chapter.text().accept(pages);
          }
          pages.finish();
          frame.end();
        });
  }

  private static void title(BookCover cover, Paper paper, Pen pen) {
    double room = paper.width() - 2 * BookPages.MARGIN;
    double y = paper.height() * 0.72;
    y -= block(pen, cover.over(), false, OVER_TYPE, room, y) + 14;
    y -= block(pen, cover.title(), true, TITLE_TYPE, room, y) + 24;
    for (String line : cover.lines()) {
      y -= block(pen, line, false, LINE_TYPE, room, y) + 4;
    }
    block(pen, cover.decide(), false, DECIDE_TYPE, room, 130);
  }

  /** Sets a text wrapped to a width; answers how high it is. */
  private static double block(
      Pen pen, String text, boolean bold, double size, double room, double top) {
    String said = Plainly.of(text, pen.faces().of(bold), room, size);
    List<TextBlock.Line> lines =
        new TextBlock(pen.faces(), room, Double.MAX_VALUE)
            .fit(List.of(new Wording("title", said, bold, size, size, size * LEAST)));
    pen.block(lines, BookPages.MARGIN, top);
    return TextBlock.height(lines);
  }

  private static void contents(
      List<Chapter> chapters, Paper paper, Pen pen, BookFrame frame, PdfWriter writer) {
    double right = paper.width() - BookPages.MARGIN;
    double y = paper.height() - 80;
    pen.line("Contents", true, 18, BookPages.MARGIN, y);
    y -= CONTENTS_LINE * 1.6;
    for (Chapter chapter : chapters) {
      pen.line(chapter.title(), false, CONTENTS_TYPE, BookPages.MARGIN, y);
      frame.leave(right, y);
      writer
          .getDirectContent()
          .setAction(
              PdfAction.gotoLocalPage(chapter.title(), false),
              (float) BookPages.MARGIN,
              (float) (y - 4),
              (float) right,
              (float) (y + CONTENTS_TYPE));
      y -= CONTENTS_LINE;
    }
  }
}
