package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.List;

/** Sets lines of type on a canvas. Positions in points from its lower left corner. */
record Pen(PdfContentByte canvas, Faces faces) {

  /** Sets one line beginning at a point of its base line. */
  void line(String text, boolean bold, double size, double x, double y) {
    canvas.beginText();
    canvas.setFontAndSize(faces.of(bold).font(), (float) size);
    canvas.setTextMatrix((float) x, (float) y);
    canvas.showText(Faces.fromLeft(text));
    canvas.endText();
  }

  /** Sets lines below each other, the first right under {@code top}. */
  void block(List<TextBlock.Line> lines, double x, double top) {
    block(lines, x, top, 0);
  }

  /** As {@link #block}, each line ending at {@code right}. */
  void blockEnding(List<TextBlock.Line> lines, double right, double top) {
    block(lines, right, top, 1);
  }

  /** As {@link #block}, each line with its middle at {@code middle}. */
  void blockCentered(List<TextBlock.Line> lines, double middle, double top) {
    block(lines, middle, top, 0.5);
  }

  private void block(List<TextBlock.Line> lines, double x, double top, double widthsToTheLeft) {
    double y = top;
    for (TextBlock.Line line : lines) {
      Face face = faces.of(line.bold());
      double left = x - widthsToTheLeft * face.width(line.text()) * line.size();
      line(line.text(), line.bold(), line.size(), left, y - face.ascent() * line.size());
      y -= line.height();
    }
  }

  /** Draws a level line. */
  void rule(double from, double to, double y, double thick) {
    canvas.setLineWidth((float) thick);
    canvas.moveTo((float) from, (float) y);
    canvas.lineTo((float) to, (float) y);
    canvas.stroke();
  }
}
