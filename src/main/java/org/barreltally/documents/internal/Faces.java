package org.barreltally.documents.internal;

import java.text.Bidi;
import java.text.Normalizer;

/** The two fonts of one document, and how text is made ready for them. */
record Faces(Face regular, Face bold) {

  static Faces read() {
    return new Faces(Face.regular(), Face.bold());
  }

  Face of(boolean strong) {
    return strong ? bold : regular;
  }

  /** One line of composed characters, with any white space as single blanks. */
  static String tidy(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC).replaceAll("\\s+", " ").strip();
  }

  /** The characters as they stand from left to right (Unicode Standard Annex 9). */
  static String fromLeft(String text) {
    char[] characters = text.toCharArray();
    if (!Bidi.requiresBidi(characters, 0, characters.length)) {
      return text;
    }
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    byte[] levels = new byte[bidi.getRunCount()];
    String[] runs = new String[bidi.getRunCount()];
    for (int i = 0; i < runs.length; i++) {
      String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      levels[i] = (byte) bidi.getRunLevel(i);
      runs[i] = levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
    }
    Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
    return String.join("", runs);
  }
}
