package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.CardText;
import org.barreltally.documents.Paper;

/** Greeting cards, four on a page, to be cut apart along the marks. */
public final class GreetingCardPdf {

  private static final int ACROSS = 2;
  private static final int DOWN = 2;
  private static final double MARGIN = 30;
  private static final double TYPE = 17;
  private static final double LEAST = 8;
  private static final double NUMBER = 7;
  private static final double MARK = 12;

  private GreetingCardPdf() {}

  /**
   * @throws org.barreltally.documents.TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(List<CardText> cards, Paper paper) {
    double width = paper.width() / ACROSS;
    double height = paper.height() / DOWN;
    return Pdf.of(
        "Greeting cards",
        paper.width(),
        paper.height(),
        (document, writer) -> {
          Pen pen = new Pen(writer.getDirectContent(), Faces.read());
          for (int i = 0; i < cards.size(); i++) {
            int place = i % (ACROSS * DOWN);
            if (place == 0) {
              if (i > 0) {
                document.newPage();
              }
              marks(pen.canvas(), paper);
            }
            double left = place % ACROSS * width;
            double top = paper.height() - place / ACROSS * height;
            draw(pen, cards.get(i), left, top, width, height);
          }
        });
  }

  private static void draw(
      Pen pen, CardText card, double left, double top, double width, double height) {
    List<Wording> texts = new ArrayList<>();
    for (String line : card.text().lines().toList()) {
      pen.faces().regular().require(Faces.tidy(line), card.field());
      texts.add(new Wording(card.field(), line, false, TYPE, TYPE, LEAST));
    }
    double room = height - 2 * MARGIN;
    List<TextBlock.Line> lines = new TextBlock(pen.faces(), width - 2 * MARGIN, room).fit(texts);
    double y = top - MARGIN - (room - TextBlock.height(lines)) / 2;
    for (TextBlock.Line line : lines) {
      Face face = pen.faces().regular();
      double x = left + (width - face.width(line.text()) * line.size()) / 2;
      pen.line(line.text(), false, line.size(), x, y - face.ascent() * line.size());
      y -= line.height();
    }
    pen.line(String.valueOf(card.n()), false, NUMBER, left + MARGIN / 2, top - height + MARGIN / 2);
  }

  /** Short lines at the edges and a cross in the middle, where the cuts run. */
  private static void marks(PdfContentByte canvas, Paper paper) {
    float x = (float) paper.width() / ACROSS;
    float y = (float) paper.height() / DOWN;
    float mark = (float) MARK;
    canvas.setLineWidth(0.5f);
    line(canvas, x, 0, x, mark);
    line(canvas, x, (float) paper.height(), x, (float) paper.height() - mark);
    line(canvas, 0, y, mark, y);
    line(canvas, (float) paper.width(), y, (float) paper.width() - mark, y);
    line(canvas, x - mark / 2, y, x + mark / 2, y);
    line(canvas, x, y - mark / 2, x, y + mark / 2);
  }

  private static void line(PdfContentByte canvas, float x, float y, float toX, float toY) {
    canvas.moveTo(x, y);
    canvas.lineTo(toX, toY);
    canvas.stroke();
  }
}
