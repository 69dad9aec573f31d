package org.barreltally.measure;

import org.barreltally.refusal.InvalidField;

/**
 * The color classes of Grade A syrup, lightest first, and Processing Grade. Names: United States
 * Standards for Grades of Maple Syrup (USDA AMS, 2015); each class has its fixed taste word.
 */
public enum ColorClass {
  GOLDEN("Golden, delicate taste"),
  AMBER("Amber, rich taste"),
  DARK("Dark, robust taste"),
  VERY_DARK("Very dark, strong taste"),
  /** Off-flavours allowed; only in containers of 5 gallons or more, never retail. */
  PROCESSING("Processing grade");

  private final String words;

  ColorClass(String words) {
    this.words = words;
  }

  /** {@code golden, amber, dark, very-dark, processing}. */
  public String code() {
    return Codes.of(this);
  }

  /** For labels and screens: {@code Golden, delicate taste}. */
  public String words() {
    return words;
  }

  /**
   * @throws InvalidField when no class has that code
   */
  public static ColorClass of(String code) {
    return Codes.find(ColorClass.class, code, "grade");
  }
}
