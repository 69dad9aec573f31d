package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.List;

/** A part of a price list that is not broken over columns. Lengths in points. */
interface SheetBlock {

  /** Blank over a heading, by its type. */
  double BEFORE = 0.7;

  double height();

  /** Draws it in a column, its upper left corner at a point. */
  void draw(Pen pen, double x, double top, double width);

  /** The words over a section, with a line under them. */
  record Heading(List<TextBlock.Line> lines) implements SheetBlock {

    private static final double UNDER = 6;
    private static final double THICK = 1.2;

    @Override
    public double height() {
      return TextBlock.height(lines) + UNDER;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) {
      pen.block(lines, x, top);
      pen.rule(x, x + width, top - TextBlock.height(lines) - UNDER / 4, THICK);
    }
  }

  /**
   * What is sold and its price, joined by dots.
   *
   * @param name lines of the name, the last of which bears the price
   * @param detail beside the name, or on lines of its own where there is no room beside
   * @param beside whether the detail stands beside the name
   */
  record Row(List<TextBlock.Line> name, List<TextBlock.Line> detail, boolean beside, String price)
      implements SheetBlock {

    private static final double LEADING = 1.22;
    private static final double GAP = 6;
    private static final float DOT = 1.1f;

    @Override
    public double height() {
      double lines = TextBlock.height(name) + (beside ? 0 : TextBlock.height(detail));
      return lines * LEADING / 1.15;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) {
      TextBlock.Line last = name.get(name.size() - 1);
      Face face = pen.faces().of(last.bold());
      Face bold = pen.faces().bold();
      pen.block(name, x, top);
      double base = top - TextBlock.height(name) + last.height() - face.ascent() * last.size();
      double end = x + face.width(last.text()) * last.size();
      if (beside) {
        TextBlock.Line small = detail.get(0);
        pen.line(small.text(), small.bold(), small.size(), end + GAP, base);
        end += GAP + pen.faces().regular().width(small.text()) * small.size();
      } else {
        pen.block(detail, x, top - TextBlock.height(name));
      }
      double priceAt = x + width - bold.width(price) * last.size();
      pen.line(price, true, last.size(), priceAt, base);
      dots(pen.canvas(), end + GAP, priceAt - GAP, base);
    }

    private static void dots(PdfContentByte canvas, double from, double to, double base) {
      if (to - from < GAP) {
        return;
      }
      canvas.saveState();
      canvas.setLineWidth(DOT);
      canvas.setLineCap(PdfContentByte.LINE_CAP_ROUND);
      canvas.setLineDash(0, 4 * DOT, 0);
      canvas.moveTo((float) from, (float) base + DOT);
      canvas.lineTo((float) to, (float) base + DOT);
      canvas.stroke();
      canvas.restoreState();
    }
  }
}
