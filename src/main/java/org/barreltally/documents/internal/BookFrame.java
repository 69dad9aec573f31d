package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import org.barreltally.documents.Paper;

/**
 * What stands around the text of each page, and where chapters begin. The number of pages, and the
 * page of each chapter in the contents, are left open and filled in at the end.
 */
final class BookFrame {

  private static final double SMALL = 8;
  private static final double HEAD = 34;
  private static final double FOOT = 28;
  private static final double HAIRLINE = 0.6;
  private static final double NUMBER_ROOM = 30;

  private final PdfWriter writer;
  private final Paper paper;
  private final Faces faces;
  private final BookCover cover;
  private final PdfTemplate pages;
  private final Deque<PdfTemplate> numbers = new ArrayDeque<>();
  private int page = 1;

  BookFrame(PdfWriter writer, Paper paper, Faces faces, BookCover cover) {
    this.writer = writer;
    this.paper = paper;
    this.faces = faces;
    this.cover = cover;
    this.pages = template();
  }

  private PdfTemplate template() {
    return writer.getDirectContent().createTemplate((float) NUMBER_ROOM, (float) (2 * SMALL));
  }

  /** Draws head and foot of the page that has begun. */
  void page() {
    page++;
    draw();
  }

  /** Draws the foot of the title page. */
  void first() {
    foot();
  }

  private void draw() {
    Pen pen = new Pen(writer.getDirectContent(), faces);
    double right = paper.width() - BookPages.MARGIN;
    double y = paper.height() - HEAD;
    String title = Faces.tidy(cover.title());
    pen.line(
        fitting(cover.over(), right - BookPages.MARGIN - 200), false, SMALL, BookPages.MARGIN, y);
    pen.line(title, false, SMALL, right - faces.regular().width(title) * SMALL, y);
    pen.rule(BookPages.MARGIN, right, y - 6, HAIRLINE);
    foot();
  }

  private void foot() {
    Pen pen = new Pen(writer.getDirectContent(), faces);
    String number = "page " + page + " of ";
    double right = paper.width() - BookPages.MARGIN - NUMBER_ROOM / 2;
    pen.line(Faces.tidy(cover.state()), false, SMALL, BookPages.MARGIN, FOOT);
    pen.line(number, false, SMALL, right - faces.regular().width(number) * SMALL, FOOT);
    writer.getDirectContent().addTemplate(pages, (float) right, (float) FOOT);
  }

  private String fitting(String text, double room) {
    String said = Plainly.of(text, faces.regular(), Double.MAX_VALUE, SMALL);
    while (faces.regular().width(said) * SMALL > room && said.length() > 1) {
      said = said.substring(0, said.length() - 2).strip() + "…";
    }
    return said;
  }

  /** Leaves room for the page of a chapter, ending at {@code right}; in the order of chapters. */
  void leave(double right, double y) {
    PdfTemplate number = template();
    numbers.add(number);
    writer.getDirectContent().addTemplate(number, (float) (right - NUMBER_ROOM), (float) y);
  }

  /** Takes note that a chapter begins here. */
  void began(String title, double top) {
    PdfDestination here = new PdfDestination(PdfDestination.FITH, (float) (top + SMALL));
    new PdfOutline(writer.getDirectContent().getRootOutline(), here, title);
    writer
        .getDirectContent()
        .localDestination(title, new PdfDestination(PdfDestination.FITH, (float) (top + SMALL)));
    String said = Integer.toString(page);
    set(
        numbers.remove(),
        said,
        NUMBER_ROOM - faces.regular().width(said) * BookPdf.CONTENTS_TYPE,
        BookPdf.CONTENTS_TYPE);
  }

  /** Fills in how many pages there are. */
  void end() {
    set(pages, Integer.toString(page), 0, SMALL);
  }

  private void set(PdfTemplate where, String text, double x, double size) {
    PdfContentByte canvas = where;
    canvas.beginText();
    canvas.setFontAndSize(faces.regular().font(), (float) size);
    canvas.setTextMatrix((float) x, 0);
    canvas.showText(text);
    canvas.endText();
  }
}
