package org.barreltally.documents.internal;

/**
 * Text that must be printed whatever it is, for it stands in the book and nobody can mend it: a
 * character without a picture stands as its number in Unicode, such as [U+4E2D], and a word wider
 * than its column is parted.
 */
final class Plainly {

  /** As the smallest type of a row, {@link FormRow}. */
  private static final double LEAST_OF_SIZE = 0.7;

  private Plainly() {}

  /**
   * @param room width of the column, points
   * @param size of the type, points
   */
  static String of(String text, Face face, double room, double size) {
    StringBuilder said = new StringBuilder();
    // a fact set apart by a middle dot would be kept together, however long
    for (String word : Faces.tidy(covered(text, face)).replace(" · ", " ·\u00A0").split(" ")) {
      said.append(said.isEmpty() ? "" : " ");
      part(word, face, room / (size * LEAST_OF_SIZE), said);
    }
    return said.toString();
  }

  private static void part(String word, Face face, double room, StringBuilder said) {
    if (face.width(word) < room) {
      said.append(word);
      return;
    }
    StringBuilder piece = new StringBuilder();
    for (char each : word.toCharArray()) {
      if (!piece.isEmpty() && face.width(piece.toString() + each) >= room) {
        said.append(piece).append(' ');
        piece.setLength(0);
      }
      piece.append(each);
    }
    said.append(piece);
  }

  private static String covered(String text, Face face) {
    StringBuilder said = new StringBuilder();
    Faces.tidy(text)
        .codePoints()
        .forEach(
            c -> {
              if (face.covers(c)) {
                said.appendCodePoint(c);
              } else {
                said.append("[U+%04X]".formatted(c));
              }
            });
    return said.toString();
  }
}
