package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.Paper;
import org.barreltally.documents.PriceSheetText;
import org.barreltally.documents.TextDoesNotFit;

/**
 * A price list that is read at arm's length, taken as 700 mm.
 *
 * <p>ISO 9241-303 (from memory) asks for capitals of 20 to 22 minutes of arc, at least 16. At 700
 * mm 20 minutes are 4.07 mm and 16 are 3.26 mm; capitals of the font stand 0.73 of its size, so
 * that is type of 15.8 and 12.7 points. Rows are set in 22 points where there is room, on one page
 * in no less than 16, on two in no less than 13.
 */
public final class PriceSheetPdf {

  private static final double LARGEST = 22;
  private static final double GOOD = 16;
  private static final double LEAST = 13;
  private static final double STEP = 0.5;
  private static final double GIVE = 3;
  private static final double UNBOUNDED = 1e6;
  private static final double MAKER = 26;
  private static final double TITLE = 19;
  private static final double VALIDITY = 16;
  private static final double SMALL = 10;
  private static final double BLANK = 7;
  private static final double AFTER_HEAD = 10;
  private static final double SMALLEST = 6;

  private final PriceSheetText text;
  private final Paper paper;
  private final Faces faces;
  private final List<TextBlock.Line> head;
  private final List<TextBlock.Line> laterHead;

  private PriceSheetPdf(PriceSheetText text, Paper paper) {
    this.text = text;
    this.paper = paper;
    this.faces = Faces.read();
    double width = paper.width() - 2 * SheetColumns.MARGIN;
    head = new ArrayList<>();
    add(head, "maker", text.maker(), true, MAKER, width);
    add(head, "address", String.join(", ", text.address()), false, SMALL + 1, width);
    head.add(new TextBlock.Line(" ", false, BLANK));
    add(head, "name", text.title() + " · " + text.name(), true, TITLE, width);
    add(head, "validity", text.validity(), false, VALIDITY, width);
    text.notices().forEach(notice -> add(head, "notices", notice, true, VALIDITY, width));
    laterHead = new ArrayList<>();
    add(laterHead, "name", text.name() + " · " + text.validity(), false, SMALL + 3, width);
  }

  /**
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(PriceSheetText text, Paper paper) {
    PriceSheetPdf sheet = new PriceSheetPdf(text, paper);
    SheetFlow flow = sheet.flow();
    return Pdf.of(
        text.title() + " " + text.name(),
        paper.width(),
        paper.height(),
        (document, writer) -> {
          for (int page = 0; page < flow.pages(); page++) {
            if (page > 0) {
              document.newPage();
            }
            sheet.draw(flow, page, writer.getDirectContent());
          }
        });
  }

  /**
   * The largest type that does: on one page, on two, in two columns; else as many pages as need be.
   */
  private SheetFlow flow() {
    SheetFlow flow = largest(1, 1, GOOD);
    flow = flow != null ? flow : largest(2, 1, LEAST);
    flow = flow != null ? flow : largest(2, 2, LEAST);
    flow = flow != null ? flow : largest(Integer.MAX_VALUE, 2, LEAST);
    return flow != null ? flow : flow(1, LEAST);
  }

  /** The largest type on so many pages, a little smaller if no row then stands alone; or null. */
  private SheetFlow largest(int pages, int columns, double least) {
    try {
      SheetFlow largest = flow(columns, least);
      if (largest.pages() > pages) {
        return null;
      }
      SheetFlow tidy = largest;
      for (double type = least + STEP; type <= LARGEST && pages < 3; type += STEP) {
        SheetFlow next = flow(columns, type);
        if (next.pages() > pages) {
          break;
        }
        largest = next;
        tidy = next.hasRowAlone() ? tidy : next;
      }
      boolean near = tidy.type() >= largest.type() - GIVE && !tidy.hasRowAlone();
      return near ? tidy : largest;
    } catch (TextDoesNotFit tooNarrow) {
      return null;
    }
  }

  private SheetFlow flow(int columns, double type) {
    SheetColumns places =
        new SheetColumns(
            paper,
            columns,
            TextBlock.height(head) + AFTER_HEAD,
            TextBlock.height(laterHead) + AFTER_HEAD);
    return SheetFlow.of(text, faces, places, type);
  }

  private void draw(SheetFlow flow, int page, PdfContentByte canvas) {
    Pen pen = new Pen(canvas, faces);
    double top = paper.height() - SheetColumns.MARGIN;
    pen.block(page == 0 ? head : laterHead, SheetColumns.MARGIN, top);
    for (SheetFlow.Placed placed : flow.placed()) {
      if (placed.page() == page) {
        placed.block().draw(pen, placed.x(), placed.top(), flow.columns().width());
      }
    }
    List<TextBlock.Line> foot = new ArrayList<>();
    double width = flow.columns().inner();
    text.footnotes().forEach(note -> add(foot, "footnotes", note, false, SMALL, width));
    String number = flow.pages() > 1 ? " · page " + (page + 1) + " of " + flow.pages() : "";
    add(foot, "version", text.version() + number, false, SMALL, width);
    pen.block(foot, SheetColumns.MARGIN, SheetColumns.MARGIN + TextBlock.height(foot));
  }

  private void add(
      List<TextBlock.Line> lines,
      String field,
      String words,
      boolean bold,
      double size,
      double width) {
    if (words.isBlank()) {
      return;
    }
    faces.of(bold).require(Faces.tidy(words), field);
    lines.addAll(
        new TextBlock(faces, width, UNBOUNDED)
            .fit(List.of(new Wording(field, words, bold, size, 0.7 * size, SMALLEST))));
  }
}
