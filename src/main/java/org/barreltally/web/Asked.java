package org.barreltally.web;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.refusal.InvalidField;

/**
 * Reads what stands in the query of an address. What cannot be read is refused by an {@link
 * InvalidField} that names the parameter; what was left out stays null.
 */
public final class Asked {

  private Asked() {}

  /** A day. */
  public static LocalDate day(String text, String name) {
    try {
      return text == null ? null : LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new InvalidField(name, "Give a date such as 2026-03-14, or leave it out.");
    }
  }

  /** A year from 1900 to 2999. */
  public static Integer year(String text, String name) {
    if (text == null) {
      return null;
    }
    if (!text.matches("(19|2\\d)\\d{2}")) {
      throw new InvalidField(name, "Give a year in four digits, such as 2026.");
    }
    return Integer.valueOf(text);
  }

  /** A year that has to be given. */
  public static int yearGiven(String text, String name) {
    return year(text == null ? "" : text, name);
  }

  /** A whole number of at most nine digits. */
  public static Integer whole(String text, String name) {
    if (text == null) {
      return null;
    }
    if (!text.matches("-?[0-9]{1,9}")) {
      throw new InvalidField(name, "Give a whole number, or leave it out.");
    }
    return Integer.valueOf(text);
  }

  /** A number of at most nine digits and six decimals. */
  public static BigDecimal decimal(String text, String name) {
    if (text == null) {
      return null;
    }
    if (!text.matches("-?[0-9]{1,9}(\\.[0-9]{1,6})?")) {
      throw new InvalidField(name, "Give a number such as 15.9, or leave it out.");
    }
    return new BigDecimal(text);
  }

  /** Whether it says true; no where it was left out. */
  public static boolean yes(String text, String name) {
    return Boolean.TRUE.equals(yesOrNo(text, name));
  }

  /** True, false, or null where it was left out. */
  public static Boolean yesOrNo(String text, String name) {
    if (text == null) {
      return null;
    }
    if (!text.equals("true") && !text.equals("false")) {
      throw new InvalidField(name, "Give true or false, or leave it out.");
    }
    return text.equals("true");
  }

  /** The one of all with that code. */
  public static <T> T oneOf(T[] all, Function<T, String> codeOf, String code, String name) {
    if (code == null) {
      return null;
    }
    return Arrays.stream(all)
        .filter(one -> codeOf.apply(one).equals(code))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidField(
                    name,
                    Arrays.stream(all)
                        .map(codeOf)
                        .collect(Collectors.joining(", ", "Give one of ", "."))));
  }

  /** The one of all with that code, which has to be given. */
  public static <T> T oneGiven(T[] all, Function<T, String> codeOf, String code, String name) {
    return oneOf(all, codeOf, code == null ? "" : code, name);
  }
}
