package org.barreltally.documents.internal;

import java.text.Bidi;
import java.text.Normalizer;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The two fonts of one document, and how text is made ready for them. */
record Faces(Face regular, Face bold) {

  /** A base and the marks upon it (Unicode Standard Annex 29). */
  private static final Pattern CLUSTER = Pattern.compile("\\X");

  /** Each is drawn as its neighbour where text runs from the right (Unicode, BidiMirroring.txt). */
  private static final String MIRRORED = "()[]{}<>«»‹›≤≥";

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

  /**
   * The characters as they stand from left to right (Unicode Standard Annex 9): what runs from the
   * right is turned, with marks after their base (rule L3) and brackets mirrored (rule L4).
   */
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
      runs[i] = levels[i] % 2 == 0 ? run : turned(run);
    }
    Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
    return String.join("", runs);
  }

  private static String turned(String run) {
    List<String> clusters = CLUSTER.matcher(run).results().map(MatchResult::group).toList();
    StringBuilder turned = new StringBuilder();
    for (int i = clusters.size() - 1; i >= 0; i--) {
      int place = MIRRORED.indexOf(clusters.get(i));
      turned.append(place < 0 ? clusters.get(i) : MIRRORED.charAt(place ^ 1));
    }
    return turned.toString();
  }
}
