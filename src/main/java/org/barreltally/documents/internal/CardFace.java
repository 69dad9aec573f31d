package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.PriceCardText;
import org.barreltally.documents.TextDoesNotFit;

/**
 * Draws one price card: an award in a black band at the head, the jar and its grade, the price as
 * large as there is room, the deals under it, and at the foot by whom and since when. Lengths in
 * points.
 */
final class CardFace {

  private static final double LEAST_MARGIN = 6;
  private static final double LEAST_PRICE = 14;
  private static final double LEAST_TYPE = 6;
  private static final double FOOT = 7.5;
  private static final double GAP = 3;

  /** Shares of the height of a card. */
  private static final double BAND = 0.13;

  private static final double PRICE = 0.34;
  private static final double PRICE_ALONE = 0.42;
  private static final double DEALS = 0.17;
  private static final double NAME = 0.135;
  private static final double GRADE = 0.1;
  private static final double CONTENTS = 0.075;

  private final Faces faces;
  private final PriceCardText text;
  private final double width;
  private final double height;
  private final double margin;

  CardFace(Faces faces, PriceCardText text, double width, double height) {
    this.faces = faces;
    this.text = text;
    this.width = width;
    this.height = height;
    this.margin = Math.max(LEAST_MARGIN, 0.05 * Math.min(width, height));
  }

  /**
   * @throws TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming it
   */
  void draw(PdfContentByte canvas) {
    Pen pen = new Pen(canvas, faces);
    double top = height - band(pen) - margin / 2;
    double foot = foot(pen);
    if (!text.deals().isEmpty()) {
      List<TextBlock.Line> deals = deals();
      foot += TextBlock.height(deals);
      pen.blockCentered(deals, width / 2, foot);
    }
    double size = price();
    double base = foot + GAP + 0.04 * height;
    Face bold = faces.bold();
    pen.line(text.price(), true, size, (width - bold.width(text.price()) * size) / 2, base);
    foot = base + bold.capitals() * size + GAP;
    List<Wording> words = new ArrayList<>();
    words.add(wording("lines", text.name(), true, NAME));
    if (!text.grade().isEmpty()) {
      words.add(wording("grade", text.grade(), false, GRADE));
    }
    words.add(wording("lines", text.contents(), false, CONTENTS));
    List<TextBlock.Line> lines = new TextBlock(faces, inner(), top - foot).fit(words);
    double above = (top - foot - TextBlock.height(lines)) / 2;
    pen.blockCentered(lines, width / 2, top - above);
  }

  private double inner() {
    return width - 2 * margin;
  }

  /** The award, white on black; how high its band is. */
  private double band(Pen pen) {
    if (text.ribbon() == null) {
      return 0;
    }
    double high = BAND * height;
    List<TextBlock.Line> lines =
        new TextBlock(faces, inner(), high)
            .fit(List.of(covered("ribbon", text.ribbon(), true, 0.6 * high, LEAST_TYPE)));
    PdfContentByte canvas = pen.canvas();
    canvas.setGrayFill(0);
    canvas.rectangle(0, (float) (height - high), (float) width, (float) high);
    canvas.fill();
    canvas.setGrayFill(1);
    pen.blockCentered(lines, width / 2, height - (high - TextBlock.height(lines)) / 2);
    canvas.setGrayFill(0);
    return high;
  }

  private double foot(Pen pen) {
    List<TextBlock.Line> lines =
        new TextBlock(faces, inner(), height / 4)
            .fit(List.of(covered("maker", text.foot(), false, FOOT, LEAST_TYPE)));
    double high = TextBlock.height(lines);
    pen.blockCentered(lines, width / 2, margin / 2 + high);
    return margin / 2 + high + GAP;
  }

  private List<TextBlock.Line> deals() {
    return new TextBlock(faces, inner(), DEALS * height)
        .fit(
            List.of(
                covered(
                    "deals",
                    String.join(" · ", text.deals()),
                    true,
                    0.75 * DEALS * height,
                    LEAST_TYPE)));
  }

  private double price() {
    double share = text.deals().isEmpty() ? PRICE_ALONE : PRICE;
    double size = Math.min(share * height, inner() / faces.bold().width(text.price()));
    if (size < LEAST_PRICE) {
      throw new TextDoesNotFit("sheet", "“" + text.price() + "” is wider than the card.");
    }
    return size;
  }

  private Wording wording(String field, String words, boolean bold, double share) {
    return covered(field, words, bold, share * height, LEAST_TYPE);
  }

  private Wording covered(String field, String words, boolean bold, double size, double least) {
    faces.of(bold).require(Faces.tidy(words), field);
    double good = Math.max(size, least);
    return new Wording(field, words, bold, good, Math.max(least, 0.75 * good), least);
  }
}
