package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.barreltally.documents.LabelText;
import org.barreltally.documents.TextDoesNotFit;

/**
 * Draws one label: the net contents at its foot, as a panel carries them in its lowest 30 percent
 * (21 CFR 101.7(f)), the bars beside or above them, the QR code at the upper right and the words
 * beside it. Lengths in points.
 */
final class LabelFace {

  /** Printers miss by about this much; nothing stands nearer to the cut. A sixteenth of an inch. */
  private static final double LEAST_MARGIN = 4.5;

  private static final double GAP = 3;
  private static final double POINTS_PER_INCH = 72;

  /**
   * Least width of one bar or QR module, about 0.19 and 0.3 mm; common practice for printed codes.
   */
  private static final double LEAST_BAR = 0.54;

  private static final double GOOD_BAR = 0.65;
  private static final double WIDEST_BAR = 0.95;
  private static final double LEAST_MODULE = 0.85;
  private static final double LARGEST_QR = 96;
  private static final double LEAST_BARS = 9;
  private static final double LEAST_TYPE = 5;
  private static final double SHRINKS_BEFORE_WRAPPING = 0.75;

  private final Faces faces;
  private final LabelText text;
  private final double width;
  private final double height;
  private final double margin;

  LabelFace(Faces faces, LabelText text, double width, double height) {
    this.faces = faces;
    this.text = text;
    this.width = width;
    this.height = height;
    this.margin = Math.max(LEAST_MARGIN, 0.045 * Math.min(width, height));
  }

  /** The net contents as they are set, and how wide that is. */
  private record Net(String words, double size, double width) {}

  /**
   * @throws TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming it
   */
  void draw(PdfContentByte canvas) {
    requireCovered();
    CodeImage bars =
        text.gtin() == null ? CodeImage.bars(text.lot()) : CodeImage.bars(text.gtin(), text.lot());
    Net net = net(bars);
    Pen pen = new Pen(canvas, faces);
    double netLine = margin + faces.bold().descent() * net.size();
    pen.line(net.words(), true, net.size(), margin, netLine);
    double foot = bars(canvas, bars, net, netLine + faces.bold().ascent() * net.size());

    double side = Math.min(Math.min(height - margin - foot, 0.32 * inner()), LARGEST_QR);
    CodeImage qr = qr(side);
    double module = side / qr.across();
    double over = qr.overlap(module, margin);
    qr.draw(canvas, width - margin - side + over, height - margin - side + over, side, side);
    words(pen, inner() - side + over, height - margin - foot);
  }

  /** Where to find the lot, if that can be scanned from a square of this side; else its code. */
  private CodeImage qr(double side) {
    return Stream.<Supplier<CodeImage>>of(
            () -> CodeImage.qr(text.scanned()),
            () -> CodeImage.smallQr(text.scanned()),
            () -> CodeImage.qr(text.lot()))
        .map(Supplier::get)
        .filter(code -> side / code.across() >= LEAST_MODULE)
        .findFirst()
        .orElseThrow(
            () ->
                new TextDoesNotFit("sheet", "There is no room for a QR code that can be scanned."));
  }

  private double inner() {
    return width - 2 * margin;
  }

  /**
   * The fullest way to say them beside the bars, in good size or the least; else above the bars.
   */
  private Net net(CodeImage bars) {
    Face bold = faces.bold();
    double least = text.leastHeight() / bold.lowerCase();
    double good = Math.max(least, Math.min(0.13 * height, 22));
    for (double size : new double[] {good, least}) {
      String fullest = text.netContents().get(0);
      Net net = new Net(fullest, size, bold.width(fullest) * size);
      if (beside(bars, net) >= GOOD_BAR) {
        return net;
      }
    }
    for (String way : text.netContents()) {
      double size = Math.min(good, inner() / bold.width(way));
      if (size >= least) {
        return new Net(way, size, bold.width(way) * size);
      }
    }
    throw new TextDoesNotFit(
        "sheet",
        String.format(
            Locale.ROOT,
            "“%s” is wider than the label in the least type height, %.4f in for a panel of this size.",
            text.netContents().get(text.netContents().size() - 1),
            text.leastHeight() / POINTS_PER_INCH));
  }

  /** The width of one bar if they stand beside the net contents. */
  private double beside(CodeImage bars, Net net) {
    return Math.min(WIDEST_BAR, (inner() + margin - net.width() - GAP) / bars.across());
  }

  /** Draws the bars beside the net contents if there is room, else above; the new foot. */
  private double bars(PdfContentByte canvas, CodeImage bars, Net net, double top) {
    double beside = beside(bars, net);
    if (beside >= GOOD_BAR) {
      double high = Math.max(top - margin, Math.min(0.2 * height, 28));
      double wide = beside * bars.across();
      double right = width - margin + bars.overlap(beside, margin);
      bars.draw(canvas, right - wide, margin, wide, high);
      return Math.max(top, margin + high) + GAP;
    }
    double module = Math.min(WIDEST_BAR, (inner() + margin) / bars.across());
    if (module < LEAST_BAR) {
      throw new TextDoesNotFit("sheet", "There is no room for bars that can be scanned.");
    }
    double high = Math.max(LEAST_BARS, Math.min(0.13 * height, 24));
    double left = margin - bars.overlap(module, margin);
    bars.draw(canvas, left, top + 2, module * bars.across(), high);
    return top + 2 + high + GAP;
  }

  private void words(Pen pen, double room, double high) {
    TextBlock block = new TextBlock(faces, room, high);
    List<TextBlock.Line> lines;
    try {
      lines = block.fit(wordings(text.address(), text.facts()));
    } catch (TextDoesNotFit lineByLine) {
      lines =
          block.fit(
              wordings(
                  List.of(String.join(", ", text.address())),
                  List.of(String.join(" · ", text.facts()))));
    }
    pen.block(lines, margin, height - margin);
  }

  private List<Wording> wordings(List<String> address, List<String> facts) {
    List<Wording> all = new ArrayList<>();
    all.add(wording("sheet", text.product(), true, Math.min(0.13 * height, 26), 7));
    all.add(wording("sheet", text.grade(), false, Math.min(0.1 * height, 18), 6));
    double small = Math.min(0.072 * height, 12);
    all.add(wording("maker", text.maker(), true, small, LEAST_TYPE));
    address.forEach(line -> all.add(wording("address", line, false, small, LEAST_TYPE)));
    facts.forEach(line -> all.add(wording("lot", line, false, small, LEAST_TYPE)));
    return all;
  }

  private static Wording wording(
      String field, String text, boolean bold, double preferred, double least) {
    double good = Math.max(preferred, least);
    return new Wording(
        field, text, bold, good, Math.max(least, SHRINKS_BEFORE_WRAPPING * good), least);
  }

  private void requireCovered() {
    faces.bold().require(Faces.tidy(text.maker()), "maker");
    text.address().forEach(line -> faces.regular().require(Faces.tidy(line), "address"));
  }
}
