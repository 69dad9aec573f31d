package org.barreltally.documents.internal;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.barreltally.documents.CharacterNotCovered;

/** An embedded font of one document, measured. Lengths are for type of size 1. */
final class Face {

  private static final double UNITS = 1000;

  private final BaseFont font;

  private Face(BaseFont font) {
    this.font = font;
  }

  /** Liberation Sans (SIL Open Font License), read anew for each document. */
  static Face regular() {
    return new Face(read("LiberationSans-Regular.ttf"));
  }

  static Face bold() {
    return new Face(read("LiberationSans-Bold.ttf"));
  }

  BaseFont font() {
    return font;
  }

  double width(String text) {
    return font.getWidthPoint(text, 1);
  }

  /** Of the letter o over the base line. */
  double lowerCase() {
    return top('o');
  }

  /** Of the letter H. */
  double capitals() {
    return top('H');
  }

  private double top(char letter) {
    int[] box = font.getCharBBox(letter);
    return box[3] / UNITS;
  }

  /** Of the highest letters and accents above the line. */
  double ascent() {
    return font.getFontDescriptor(BaseFont.ASCENT, 1);
  }

  /** Below the line; positive. */
  double descent() {
    return -font.getFontDescriptor(BaseFont.DESCENT, 1);
  }

  /**
   * @throws CharacterNotCovered naming the first character without a picture
   */
  void require(String text, String field) {
    text.codePoints()
        .filter(c -> !covers(c))
        .findFirst()
        .ifPresent(
            c -> {
              throw new CharacterNotCovered(c, field);
            });
  }

  /** Whether the font has a picture of a character. */
  boolean covers(int character) {
    return character <= Character.MAX_VALUE && font.charExists(character);
  }

  private static BaseFont read(String file) {
    try (InputStream in =
        BaseFont.class.getClassLoader().getResourceAsStream("liberation/" + file)) {
      if (in == null) {
        throw new IllegalStateException("missing on the classpath: " + file);
      }
      return BaseFont.createFont(
          file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, in.readAllBytes(), null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (DocumentException e) {
      throw new IllegalStateException("cannot read " + file, e);
    }
  }
}
