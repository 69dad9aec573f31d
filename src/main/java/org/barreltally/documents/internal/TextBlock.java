package org.barreltally.documents.internal;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.TextDoesNotFit;

/**
 * Texts set one below the other in a box. Type shrinks until all fits; what is still too long in
 * its least size is wrapped between words; what does not fit then is refused.
 */
final class TextBlock {

  private static final double LEADING = 1.15;
  private static final double STEP = 0.95;
  private static final double SMALLEST = 0.3;

  /** A line as it is set. */
  record Set(String text, boolean bold, double size) {
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
  List<Set> fit(List<Wording> texts) {
    for (double scale = 1; scale > SMALLEST; scale *= STEP) {
      List<Set> lines = new ArrayList<>();
      for (Wording text : texts) {
        lines.addAll(set(text, scale));
      }
      if (height(lines) <= height) {
        return lines;
      }
    }
    throw new TextDoesNotFit(
        tallest(texts), "All the lines together are higher than the label, in the smallest type.");
  }

  static double height(List<Set> lines) {
    return lines.stream().mapToDouble(Set::height).sum();
  }

  private List<Set> set(Wording wording, double scale) {
    String text = Faces.tidy(wording.text());
    double natural = faces.of(wording.bold()).width(text);
    double size = Math.max(wording.least(), wording.preferred() * scale);
    if (natural * size > width) {
      size = Math.max(wording.least(), width / natural);
    }
    List<Set> lines = new ArrayList<>();
    for (String line : wrap(text, wording, size)) {
      lines.add(new Set(line, wording.bold(), size));
    }
    return lines;
  }

  private List<String> wrap(String text, Wording wording, double size) {
    Face face = faces.of(wording.bold());
    double room = width / size + 1e-9;
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (face.width(longer) <= room) {
        line = longer;
      } else if (face.width(word) <= room) {
        lines.add(line);
        line = word;
      } else {
        throw new TextDoesNotFit(
            wording.field(),
            "One word is wider than its place, in the smallest type: “" + cut(word) + "”.");
      }
    }
    lines.add(line);
    return lines;
  }

  /** The field of which most lines stand when all is as small as it may be. */
  private String tallest(List<Wording> texts) {
    return texts.stream()
        .map(Wording::field)
        .distinct()
        .max((a, b) -> Double.compare(leastHeight(texts, a), leastHeight(texts, b)))
        .orElse("sheet");
  }

  private double leastHeight(List<Wording> texts, String field) {
    return texts.stream()
        .filter(t -> t.field().equals(field))
        .mapToDouble(t -> height(set(t, 0)))
        .sum();
  }

  private static String cut(String word) {
    return word.length() <= 40 ? word : word.substring(0, 40) + "…";
  }
}
