package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import org.barreltally.documents.PagesText;

/** Rows on as many pages as they take, each with its number at the foot. */
public final class PagesPdf {

  private static final double MARGIN = 50;
  private static final double FOOT = 26;
  private static final double FOOT_TYPE = 8;
  private static final double SLOT_MARGIN = 34;
  private static final float DASH = 4;

  private PagesPdf() {}

  /**
   * @throws org.barreltally.documents.TextDoesNotFit naming a word wider than its column
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(PagesText text) {
    double width = text.paper().width();
    double height = text.paper().height();
    boolean slots = text.slots() > 1;
    double above = slots ? SLOT_MARGIN : MARGIN;
    // In slots the text of each begins as far below the cut as the first below the paper's edge.
    double room = height - above - (slots ? above : MARGIN);
    double slot = slots ? height / text.slots() : 0;
    double apart = slots ? 2 * above : 0;
    return Pdf.of(
        text.title(),
        width,
        height,
        (document, writer) -> {
          Faces faces = Faces.read();
          PagesFlow flow = new PagesFlow(faces, width - 2 * MARGIN, room, slot, apart);
          text.blocks().forEach(flow::add);
          Pen pen = new Pen(writer.getDirectContent(), faces);
          int page = -1;
          for (PagesFlow.Placed placed : flow.placed()) {
            while (page < placed.page()) {
              page++;
              if (page > 0) {
                document.newPage();
              }
              if (!slots) {
                foot(pen, text, page, flow.pages(), width);
              }
              cuts(pen.canvas(), flow, page, width, height);
            }
            placed.row().draw(pen, MARGIN, width - 2 * MARGIN, height - above - placed.down());
          }
        });
  }

  private static void foot(Pen pen, PagesText text, int page, int pages, double width) {
    String words = Faces.tidy(text.title());
    String number = (page + 1) + " of " + pages;
    pen.line(words, false, FOOT_TYPE, MARGIN, FOOT);
    double end = width - MARGIN - pen.faces().regular().width(number) * FOOT_TYPE;
    pen.line(number, false, FOOT_TYPE, end, FOOT);
  }

  private static void cuts(
      PdfContentByte canvas, PagesFlow flow, int page, double width, double height) {
    canvas.saveState();
    canvas.setLineWidth(0.5f);
    canvas.setLineDash(DASH, DASH, 0);
    for (PagesFlow.Cut cut : flow.cuts()) {
      if (cut.page() == page) {
        float y = (float) (height - cut.down());
        canvas.moveTo(0, y);
        canvas.lineTo((float) width, y);
        canvas.stroke();
      }
    }
    canvas.restoreState();
  }
}
