package org.barreltally.documents;

import org.barreltally.refusal.InvalidField;

/**
 * A Global Trade Item Number, which GS1 licenses to the owner; nothing here makes one up.
 *
 * @param digits all 14, filled up with zeros from the left
 */
record Gtin(String digits) {

  private static final int LENGTH = 14;

  /**
   * Reads a number of 8, 12, 13 or 14 digits.
   *
   * @return null for null
   * @throws InvalidField naming gtin if it has another length or its last digit does not check
   */
  static Gtin of(String text) {
    if (text == null) {
      return null;
    }
    if (!text.matches("[0-9]{8}|[0-9]{12,14}")) {
      throw new InvalidField("gtin", "Give the 8, 12, 13 or 14 digits that GS1 gave you.");
    }
    int last = text.length() - 1;
    int check = checkDigit(text.substring(0, last));
    if (check != text.charAt(last) - '0') {
      throw new InvalidField(
          "gtin",
          "After these digits the last one would be "
              + check
              + ", so one of them is mistyped. Compare it with your licence.");
    }
    return new Gtin("0".repeat(LENGTH - text.length()) + text);
  }

  /**
   * The digit that ends a number: from the right the others weigh 3, 1, 3, …, and it fills the sum
   * up to a multiple of ten (GS1 General Specifications, section 7.9).
   */
  static int checkDigit(String others) {
    int sum = 0;
    for (int i = 0; i < others.length(); i++) {
      int weight = (others.length() - i) % 2 == 1 ? 3 : 1;
      sum += weight * (others.charAt(i) - '0');
    }
    return (10 - sum % 10) % 10;
  }
}
