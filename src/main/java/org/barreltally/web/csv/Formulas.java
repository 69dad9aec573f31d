package org.barreltally.web.csv;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running text as a formula. Text that begins with one of the characters
 * named by OWASP, "CSV Injection", gets an apostrophe before it, which spreadsheets take for "this
 * is text". So does text that begins so after apostrophes of its own; whoever reads the file back
 * takes exactly one away and has what was written.
 */
final class Formulas {

  /** Equals, plus, minus, at (also of full width), tab, and the ends of lines. */
  private static final Pattern BEGINS_ONE =
      Pattern.compile("^'*[=+\\-@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20]");

  private Formulas() {}

  static String disarmed(String text) {
    return BEGINS_ONE.matcher(text).find() ? "'" + text : text;
  }
}
