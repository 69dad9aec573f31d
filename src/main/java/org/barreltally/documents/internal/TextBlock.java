package org.barreltally.documents.internal;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.TextDoesNotFit;

/**
 * Texts set one below the other in a box. A text too wide shrinks to a limit and is then wrapped
 * between words; if all together are too high, all shrink to their least sizes; what does not fit
 * then is refused.
 */
final class TextBlock {

  private static final double LEADING = 1.15;
  private static final double STEP = 0.95;
  private static final double SMALLEST = 0.2;
  private static final double ROUNDING = 1e-9;
  private static final int MOST_SHOWN = 40;

  /** A line as it is set. */
  record Line(String text, boolean bold, double size) {
    double height() {
      return size * LEADING;
    }
  }

  private final Faces faces;
  private final double width;
  private final double height;

  /** Width and height of the box in points. */
  TextBlock(Faces faces, double width, double height) {
    this.faces = faces;
    this.width = width;
    this.height = height;
  }

  /**
   * @throws TextDoesNotFit naming what is too long
   */
  List<Line> fit(List<Wording> texts) {
    for (double scale = 1; scale > SMALLEST; scale *= STEP) {
      List<Line> lines = new ArrayList<>();
      for (Wording text : texts) {
        lines.addAll(set(text, size(text, texts, scale)));
      }
      if (height(lines) <= height) {
        return lines;
      }
    }
    throw new TextDoesNotFit(
        tallest(texts), "All the lines together are higher than the label, in the smallest type.");
  }

  static double height(List<Line> lines) {
    return lines.stream().mapToDouble(Line::height).sum();
  }

  /** One size for all texts that are sized alike: what the widest of them needs. */
  private double size(Wording text, List<Wording> texts, double scale) {
    double widest =
        texts.stream().filter(text::likeSized).mapToDouble(this::natural).max().orElseThrow();
    double whole = Math.max(text.wrapping(), Math.min(text.preferred(), width / widest));
    double longestWord =
        texts.stream().filter(text::likeSized).mapToDouble(this::longestWord).max().orElseThrow();
    return Math.max(text.least(), Math.min(whole * scale, width / longestWord));
  }

  private double natural(Wording text) {
    return faces.of(text.bold()).width(Faces.tidy(text.text()));
  }

  private double longestWord(Wording text) {
    double longest = 0;
    for (String word : parts(Faces.tidy(text.text()))) {
      longest = Math.max(longest, faces.of(text.bold()).width(word));
    }
    return longest;
  }

  private List<Line> set(Wording wording, double size) {
    Face face = faces.of(wording.bold());
    double room = width / size + ROUNDING;
    List<Line> lines = new ArrayList<>();
    String line = "";
    for (String part : parts(Faces.tidy(wording.text()))) {
      String longer = line.isEmpty() ? part : line + " " + part;
      if (face.width(longer) <= room) {
        line = longer;
        continue;
      }
      if (face.width(part) > room) {
        throw new TextDoesNotFit(
            wording.field(),
            "“" + cut(part) + "” is wider than its place, even in the smallest type.");
      }
      lines.add(new Line(line, wording.bold(), size));
      line = part;
    }
    lines.add(new Line(line, wording.bold(), size));
    return lines;
  }

  /** What is not parted at the end of a line: words, or facts set apart by a middle dot. */
  private static String[] parts(String text) {
    return text.contains(" · ") ? text.split("(?<= ·) ") : text.split(" ");
  }

  /** The field that takes most height when all is as small as it may be. */
  private String tallest(List<Wording> texts) {
    return texts.stream()
        .map(Wording::field)
        .filter(field -> !field.equals("sheet"))
        .distinct()
        .max((a, b) -> Double.compare(leastHeight(texts, a), leastHeight(texts, b)))
        .orElse("sheet");
  }

  private double leastHeight(List<Wording> texts, String field) {
    return texts.stream()
        .filter(text -> text.field().equals(field))
        .mapToDouble(text -> height(set(text, text.least())))
        .sum();
  }

  private static String cut(String word) {
    return word.length() <= MOST_SHOWN ? word : word.substring(0, MOST_SHOWN) + "…";
  }
}
