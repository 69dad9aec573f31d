package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

  /** The net contents as they are set. */
  private record Net(String words, double size) {}

  /**
   * @throws TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming it
   */
  void draw(PdfContentByte canvas) {
    requireCovered();
    Net net = net();
    Pen pen = new Pen(canvas, faces);
    Face bold = faces.bold();
    double netLine = margin + bold.descent() * net.size();
    pen.line(net.words(), true, net.size(), margin, netLine);
    double foot = netLine + bold.ascent() * net.size();

    foot = bars(canvas, bold.width(net.words()) * net.size(), foot) + GAP;
    CodeImage qr = CodeImage.qr(text.scanned());
    double side = Math.min(Math.min(height - margin - foot, 0.32 * inner()), LARGEST_QR);
    if (side / qr.across() < LEAST_MODULE) {
      throw new TextDoesNotFit("sheet", "There is no room for a QR code that can be scanned.");
    }
    qr.draw(canvas, width - margin - side, height - margin - side, side, side);
    words(pen, inner() - side - GAP, height - margin - foot);
  }

  private double inner() {
    return width - 2 * margin;
  }

  private Net net() {
    double least = text.leastHeight() / faces.bold().lowerCase();
    double good = Math.max(least, Math.min(0.13 * height, 22));
    for (String way : text.netContents()) {
      double size = Math.min(good, inner() / faces.bold().width(way));
      if (size >= least) {
        return new Net(way, size);
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

  /** Draws the bars beside the net contents if there is room, else above; the new foot. */
  private double bars(PdfContentByte canvas, double netWidth, double foot) {
    CodeImage bars = CodeImage.bars(text.lot());
    double beside = Math.min(WIDEST_BAR, (inner() - netWidth - GAP) / bars.across());
    if (beside >= GOOD_BAR) {
      double high = Math.max(foot - margin, Math.min(0.2 * height, 28));
      double wide = beside * bars.across();
      bars.draw(canvas, width - margin - wide, margin, wide, high);
      return Math.max(foot, margin + high);
    }
    double module = Math.min(WIDEST_BAR, inner() / bars.across());
    if (module < LEAST_BAR) {
      throw new TextDoesNotFit("sheet", "There is no room for bars that can be scanned.");
    }
    double high = Math.max(9, Math.min(0.13 * height, 24));
    bars.draw(canvas, margin, foot + 1, module * bars.across(), high);
    return foot + 1 + high;
  }

  private void words(Pen pen, double room, double high) {
    TextBlock block = new TextBlock(faces, room, high);
    List<TextBlock.Set> lines;
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
    all.add(new Wording("sheet", text.product(), true, Math.min(0.13 * height, 26), 7));
    all.add(new Wording("sheet", text.grade(), false, Math.min(0.1 * height, 18), 6));
    double small = Math.min(0.072 * height, 12);
    all.add(new Wording("maker", text.maker(), true, small, 5));
    address.forEach(line -> all.add(new Wording("address", line, false, small, 5)));
    facts.forEach(line -> all.add(new Wording("lot", line, false, small, 5)));
    return all;
  }

  private void requireCovered() {
    faces.bold().require(Faces.tidy(text.maker()), "maker");
    text.address().forEach(line -> faces.regular().require(Faces.tidy(line), "address"));
  }
}
