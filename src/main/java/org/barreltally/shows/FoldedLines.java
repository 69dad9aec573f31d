package org.barreltally.shows;

import java.nio.charset.StandardCharsets;

/**
 * Folds long lines as RFC 5545, 3.1 asks: at most 75 octets of UTF-8 each, the rest on lines that
 * begin with a blank. No character is cut in two.
 */
final class FoldedLines {

  private static final int OCTETS_MAX = 75;
  private static final String END = "\r\n";

  private FoldedLines() {}

  /**
   * @param text of lines that each end with CR LF, none of them folded yet
   */
  static String of(String text) {
    StringBuilder folded = new StringBuilder(text.length() + text.length() / OCTETS_MAX);
    for (String line : text.split(END)) {
      fold(line, folded);
    }
    return folded.toString();
  }

  private static void fold(String line, StringBuilder folded) {
    int octets = 0;
    for (int at = 0; at < line.length(); ) {
      String character = Character.toString(line.codePointAt(at));
      int more = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + more > OCTETS_MAX) {
        folded.append(END).append(' ');
        octets = 1;
      }
      folded.append(character);
      octets += more;
      at += character.length();
    }
    folded.append(END);
  }
}
