package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** A text has a character for which the embedded fonts have no picture. */
public final class CharacterNotCovered extends Refusal {
  public CharacterNotCovered(int character, String field) {
    super(
        Kind.RULE,
        "character-not-covered",
        "A character cannot be printed",
        "The fonts for papers have no picture of “%s” (U+%04X, %s). They cover Latin, Greek, Cyrillic and Hebrew; write it in one of these."
            .formatted(pictured(character), character, name(character)),
        field);
  }

  private static String pictured(int character) {
    return Character.isISOControl(character) ? " " : Character.toString(character);
  }

  private static String name(int character) {
    String name = Character.getName(character);
    return name == null ? "not assigned" : name;
  }
}
