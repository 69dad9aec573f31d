package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.TagText;
import org.barreltally.documents.TextDoesNotFit;

/** A tag to tie on: one page of 6 by 4 inches, large enough to be read from a few steps away. */
public final class TagPdf {

  private static final double WIDTH = 432;
  private static final double HEIGHT = 288;
  private static final double MARGIN = 18;
  private static final double BAND = 84;
  private static final double HEAD = 60;
  private static final double LEAST_HEAD = 24;
  private static final double FIRST = 22;
  private static final double OTHERS = 15;
  private static final double LEAST = 9;
  private static final double QR = 110;
  private static final double BARS = 34;
  private static final double WIDEST_BAR = 1.4;

  private TagPdf() {}

  /**
   * @throws org.barreltally.documents.TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(TagText text) {
    return Pdf.of(
        "Tag " + text.bars(),
        WIDTH,
        HEIGHT,
        (document, writer) -> draw(text, writer.getDirectContent(), Faces.read()));
  }

  private static void draw(TagText text, PdfContentByte canvas, Faces faces) {
    Pen pen = new Pen(canvas, faces);
    double inner = WIDTH - 2 * MARGIN;
    head(text, canvas, pen);

    CodeImage bars = CodeImage.bars(text.bars());
    double wide = Math.min(inner, WIDEST_BAR * bars.across());
    bars.draw(canvas, MARGIN, MARGIN, wide, BARS);
    double side = QR;
    CodeImage.qr(text.scanned()).draw(canvas, WIDTH - MARGIN - side, MARGIN + BARS, side, side);

    double top = HEIGHT - BAND - MARGIN / 2;
    double foot = MARGIN + BARS + MARGIN / 2;
    List<Wording> lines = new ArrayList<>();
    for (TagText.Line line : text.lines()) {
      boolean first = lines.isEmpty();
      faces.of(first).require(Faces.tidy(line.text()), line.field());
      double size = first ? FIRST : OTHERS;
      lines.add(new Wording(line.field(), line.text(), first, size, size, LEAST));
    }
    pen.block(new TextBlock(faces, inner - side, top - foot).fit(lines), MARGIN, top);
  }

  private static void head(TagText text, PdfContentByte canvas, Pen pen) {
    if (text.warning()) {
      canvas.setGrayFill(0);
      canvas.rectangle(0, (float) (HEIGHT - BAND), (float) WIDTH, (float) BAND);
      canvas.fill();
      canvas.setGrayFill(1);
    }
    Face bold = pen.faces().bold();
    double size = Math.min(HEAD, (WIDTH - 2 * MARGIN) / bold.width(text.head()));
    if (size < LEAST_HEAD) {
      throw new TextDoesNotFit("tag", "“" + text.head() + "” is wider than the tag.");
    }
    double line = HEIGHT - (BAND + bold.capitals() * size) / 2;
    pen.line(text.head(), true, size, MARGIN, line);
    canvas.setGrayFill(0);
  }
}
