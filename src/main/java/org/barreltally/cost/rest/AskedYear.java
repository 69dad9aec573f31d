package org.barreltally.cost.rest;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.cost.CostMethod;
import org.barreltally.refusal.InvalidField;

/** Years, methods and other words in the query of an address. */
final class AskedYear {

  private AskedYear() {}

  static int year(String text) {
    if (text == null || !text.matches("(19|2\\d)\\d\\d")) {
      throw new InvalidField("year", "Give the year, for example 2026.");
    }
    return Integer.parseInt(text);
  }

  static CostMethod method(String text) {
    return word(text, "method", CostMethod.values(), CostMethod::code, true);
  }

  static <E extends Enum<E>> E word(
      String text, String field, E[] words, Function<E, String> code, boolean mayMiss) {
    if (text == null && mayMiss) {
      return null;
    }
    return Arrays.stream(words)
        .filter(word -> code.apply(word).equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidField(
                    field,
                    "Give one of %s%s."
                        .formatted(
                            Arrays.stream(words).map(code).collect(Collectors.joining(", ")),
                            mayMiss ? ", or leave it out" : "")
                        .replace(" ,", ",")));
  }
}
